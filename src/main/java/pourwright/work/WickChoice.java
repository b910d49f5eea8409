package pourwright.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.card.CardBook;
import pourwright.card.ResolvedCandle;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.material.Property;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.shape.Outline;
import pourwright.wick.HeatCheck;
import pourwright.wick.WickMemory;
import pourwright.wick.WickMemory.Proposal;
import pourwright.wick.WickOffer;

/**
 * Which wicks for a candle, and how many: what her own tests say of each wick, and for each count
 * from one up the layout, how far a pool must reach, and the heat for the wax surface beside that
 * of a vessel that is proved for sale.
 *
 * @param candle the candle
 * @param surface outline of its wax surface
 * @param wicks what is known of each wick, the candle's own first
 * @param counts the layouts, fewest first, up to the first that does not fit
 * @param proved the proved candle that heat is held against; null where none is proved
 */
public record WickChoice(
    ResolvedCandle candle,
    Outline surface,
    List<Known> wicks,
    List<Count> counts,
    @Nullable Proved proved) {
  /** House: from a flame to the wall, in mm. */
  public static final double WALL_MM = 15;

  /** House: from flame to flame, at least, in mm. */
  public static final double SPACING_MM = 30;

  /** Typical burn rate of a wick, in g/h, where no figure of its own is known. */
  public static final double USUAL_G_PER_H = 5;

  /** Typical reach of a pool, in mm; from memory. */
  public static final double USUAL_REACH_MM = 32;

  private static final int MOST = 6;

  /** Copies. */
  public WickChoice {
    wicks = List.copyOf(wicks);
    counts = List.copyOf(counts);
  }

  /**
   * A wick.
   *
   * @param wick the material
   * @param written the figure on its card, null where there is none
   * @param rate g/h of one wick in this candle
   * @param reach how far its pool would reach, in mm
   */
  public record Known(Material wick, @Nullable Sourced written, Proposal rate, Proposal reach) {}

  /**
   * A number of wicks.
   *
   * @param offer the layouts; null when none keeps the clearances
   * @param refusal why not, or empty
   * @param heat with the candle's own wick; null without a layout
   */
  public record Count(
      int count, @Nullable WickOffer offer, String refusal, @Nullable HeatCheck heat) {}

  /** A candle proved for sale and its heat for the wax surface, in g/h per cm². */
  public record Proved(String candle, double gPerHPerCm2) {}

  /** Looks at a candle. */
  public static WickChoice of(Books books, ResolvedCandle candle) {
    CardBook cards = Drawers.book(books);
    WickTests tests = WickTests.of(books);
    Outline surface = WickTests.surface(candle);
    List<Known> wicks = new ArrayList<>();
    for (Material wick : cards.materials().all()) {
      if (wick.kind() == MaterialKind.WICK) {
        wicks.add(known(tests, candle, wick));
      }
    }
    String own = candle.design().wicks().wick();
    wicks.sort(Comparator.comparing((Known k) -> !k.wick().code().equals(own)));
    double rate = wicks.isEmpty() ? USUAL_G_PER_H : wicks.get(0).rate().value();
    Proved proved = proved(books, cards, tests, candle, surface);
    return new WickChoice(candle, surface, wicks, counts(surface, rate, proved), proved);
  }

  private static Known known(WickTests tests, ResolvedCandle candle, Material wick) {
    Optional<Sourced> written = wick.property(Property.BURN_RATE_G_PER_H);
    double usual = written.map(Sourced::value).orElse(USUAL_G_PER_H);
    WickMemory.Burnt burnt = WickTests.burnt(candle, wick.code());
    return new Known(
        wick,
        written.orElse(null),
        new WickMemory(usual, tests.rates()).propose(burnt),
        new WickMemory(USUAL_REACH_MM, tests.reaches()).propose(burnt));
  }

  private static List<Count> counts(Outline surface, double rate, @Nullable Proved proved) {
    List<Count> counts = new ArrayList<>();
    double beside = proved == null ? Double.NaN : proved.gPerHPerCm2();
    for (int count = 1; count <= MOST; count++) {
      try {
        WickOffer offer = WickOffer.of(surface, WALL_MM, SPACING_MM, count);
        HeatCheck heat = HeatCheck.of(count, rate, surface.areaMm2(), beside);
        counts.add(new Count(count, offer, "", heat));
      } catch (OutOfRange e) {
        counts.add(new Count(count, null, e.sentence() + ". " + e.hint(), null));
        break;
      }
    }
    return counts;
  }

  /** Of the candles proved for sale the one whose wax surface is most like this one's. */
  private static @Nullable Proved proved(
      Books books, CardBook cards, WickTests tests, ResolvedCandle candle, Outline surface) {
    @Nullable Proved best = null;
    double nearest = Double.POSITIVE_INFINITY;
    for (var card : books.cards().all(Drawers.CANDLE)) {
      boolean holds =
          books
              .burns()
              .proof(card.code(), card.version())
              .map(BurnTest.Proof::proved)
              .orElse(false);
      if (!holds) {
        continue;
      }
      ResolvedCandle other = card.body().resolve(cards);
      double area = WickTests.surface(other).areaMm2();
      double unlike = Math.abs(Math.log(area / surface.areaMm2()));
      boolean same = other.pour().card().code().equals(candle.pour().card().code());
      if (unlike + (same ? 0 : 0.5) < nearest) {
        nearest = unlike + (same ? 0 : 0.5);
        Known wick = known(tests, other, cards.materials().get(other.design().wicks().wick()));
        double rate = wick.rate().value() * other.design().wicks().count();
        best = new Proved(other.design().name(), rate / (area / 100));
      }
    }
    return best;
  }
}

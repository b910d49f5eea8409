package pourwright.work;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pourwright.card.CandleDesign;
import pourwright.material.Property;
import pourwright.quantity.OutOfRange;

/**
 * Plaster near a flame: it gives its bound water away in warmth, so a vessel of it is poured and
 * proved as a candle only after a wall was measured in a burn test that passed.
 */
public final class PlasterGate {
  /** House: candles of plaster that are poured for a burn test at a time. */
  public static final int TEST_MOST = 6;

  /** Hottest wall that plaster bears for long. From memory; ASHRAE (2004) saw losses from 40 °C. */
  public static final double WALL_MOST_C = 50;

  private PlasterGate() {}

  /** Whether the powder of a mix card holds no cement at all, as plaster. */
  public static boolean isPlaster(Books books, String mix) {
    try {
      return Drawers.materials(books)
          .get(books.cards().current(Drawers.MIX, mix).orElseThrow().body().powder())
          .property(Property.CEMENT_FRACTION)
          .filter(share -> share.value() == 0)
          .isPresent();
    } catch (OutOfRange | java.util.NoSuchElementException e) {
      return false; // no such card or material: other rules refuse what needs them
    }
  }

  /** Whether some candle is laid out of plaster. */
  public static boolean concerns(Books books) {
    return books.cards().all(Drawers.CANDLE).stream()
        .anyMatch(c -> isPlaster(books, c.body().mix()));
  }

  /**
   * What a candle of plaster lacks for a flame; nothing for all others, or when it was measured.
   */
  public static Optional<String> lacks(Books books, String candle) {
    Optional<CardVersion<CandleDesign>> card = books.cards().current(Drawers.CANDLE, candle);
    return card.filter(c -> isPlaster(books, c.body().mix()))
        .flatMap(c -> evidence(books, candle, c.version()));
  }

  private static Optional<String> evidence(Books books, String candle, int version) {
    Double wall = books.burns().extremes(candle, version).wallC();
    if (wall == null) {
      return Optional.of("plaster: no wall temperature was measured in a passed burn test");
    }
    return wall <= WALL_MOST_C
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "plaster: the wall became %.0f °C in a test, more than %.0f °C",
                wall,
                WALL_MOST_C));
  }

  /** Why a pour may not begin, or nothing. */
  static Optional<String> bars(Books books, BeginPour.Request request) {
    int count = request.candles().stream().mapToInt(BeginPour.Of::count).sum();
    return request.forTest() && count <= TEST_MOST
        ? Optional.empty()
        : request.candles().stream().flatMap(c -> lacks(books, c.candle()).stream()).findFirst();
  }

  /** Whether a vessel was cast of plaster although the candle's card says another mix. */
  static boolean hidden(Books books, long madeIn, String candle) {
    boolean ofPlaster =
        books.batches().batch(madeIn).filter(b -> isPlaster(books, b.plan().card())).isPresent();
    return ofPlaster
        && books
            .cards()
            .current(Drawers.CANDLE, candle)
            .filter(c -> isPlaster(books, c.body().mix()))
            .isEmpty();
  }

  /** What her proof lacks, as a list for the rule of proof. */
  static List<String> missing(Books books, String candle) {
    return lacks(books, candle).map(List::of).orElse(List.of());
  }
}

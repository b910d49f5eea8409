package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Mistake;
import pourwright.card.CandleDesign;
import pourwright.card.PourCard;
import pourwright.pour.Dose;

/**
 * Where wax goes that is left in a pitcher. House: into a candle that is proved for this scent and
 * load, into unwicked pieces labelled from their true composition, or to waste; nowhere else.
 */
public final class LeftWax {
  /** Quantity of what went to waste, in g. */
  public static final String WASTE_G = "left_waste_g";

  /** Quantity of what is kept for unwicked pieces, in g. */
  public static final String UNWICKED_G = "left_unwicked_g";

  /** Quantity of what is kept for a proved candle of the same pour card, in g. */
  public static final String PROVED_G = "left_proved_g";

  /** Quantity of what was poured into unwicked pieces, in g. */
  public static final String USED_G = "left_used_g";

  /** The load may be off by this share of itself before it is another load. House. */
  public static final double LOAD_TOLERANCE = 0.02;

  private static final Set<String> SPOILT =
      Set.of(Mistake.WRONG_BOTTLE.stepKey(), Mistake.OVERHEATED.stepKey());
  private static final String VERB = "put left wax aside";
  private final Doing doing;

  LeftWax(Doing doing) {
    this.doing = doing;
  }

  /**
   * What is left.
   *
   * @param pour the pour
   * @param grams weighed, above 0
   * @param quantity {@link #WASTE_G}, {@link #UNWICKED_G} or {@link #PROVED_G}
   * @param candle code of the proved candle, null for the other two
   */
  public record Request(long pour, double grams, String quantity, @Nullable String candle) {}

  /** Writes it down, or says why that way is closed. */
  public Outcome<List<Reading>> run(Act act, Request request) {
    return doing.once(
        act,
        VERB,
        turn -> write(turn, request),
        (books, deed) -> books.readings().ofDeed(deed.id()));
  }

  private static Outcome<List<Reading>> write(Turn turn, Request request) {
    Books books = turn.books();
    Optional<PourWatch> watch = PourWatch.of(books, request.pour());
    if (watch.isEmpty()) {
      return Doing.notOnFile("pour " + request.pour());
    }
    double there = inIt(watch.get());
    double gone = gone(books, request.pour());
    if (!(request.grams() > 0) || gone + request.grams() > there * 1.02) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          String.format(
              Locale.ROOT,
              "%.1f g cannot be left of %.1f g that went in and %.1f g written down before",
              request.grams(),
              there,
              gone),
          "weigh again");
    }
    String note = "";
    if (request.quantity().equals(PROVED_G)) {
      List<String> closed = closed(watch.get());
      String candle = request.candle();
      Optional<CandleDesign> design =
          candle == null ? Optional.empty() : proved(books, watch.get(), candle);
      if (!closed.isEmpty() || design.isEmpty()) {
        return Outcome.refused(
            Reason.INPUT_CANNOT_BE,
            closed.isEmpty() ? "that candle is not proved for this scent and load" : closed.get(0),
            "keep it for unwicked pieces or let it go to waste");
      }
      note = design.get().name();
    }
    Subject subject = Subject.of(Subject.Kind.BATCH, request.pour());
    Deed deed = turn.deed(subject);
    Reading reading =
        new Reading(0, subject, request.quantity(), request.grams(), turn.now(), null, note, 0);
    return Turn.done(deed, List.of(books.readings().append(reading, deed)));
  }

  /** Grams of everything weighed into the pitcher. */
  private static double inIt(PourWatch watch) {
    return PitcherContents.of(watch.candle().pour(), watch.done()).totalG();
  }

  private static double gone(Books books, long pour) {
    return books.readings().of(Subject.of(Subject.Kind.BATCH, pour)).stream()
        .filter(r -> List.of(WASTE_G, UNWICKED_G, PROVED_G).contains(r.quantity()))
        .mapToDouble(Reading::value)
        .sum();
  }

  /** Why what is left may not go into any candle; empty when it may. */
  public static List<String> closed(PourWatch watch) {
    List<String> closed = new ArrayList<>();
    if (watch.reheats() >= PourWalk.REHEATS_MOST) {
      closed.add(
          "it was heated again before, and pouring it would heat it once more (house: once)");
    }
    if (watch.done().stream().anyMatch(s -> SPOILT.contains(s.key()))) {
      closed.add("it is not the wax and scent that were proved: a mistake is written down of it");
    }
    PourCard card = watch.candle().pour().card();
    double wanted = Dose.loadOfTotal(card.load(), card.loadOf());
    Dose dose = watch.inThePitcher();
    double real = dose.waxG() <= 0 ? Double.NaN : dose.loadOfTotal();
    if (wanted > 0 && !(Math.abs(real / wanted - 1) <= LOAD_TOLERANCE)) {
      closed.add("its load is not the one that was proved");
    }
    return closed;
  }

  /** Candles proved for sale now that are poured by the very card this pitcher was mixed by. */
  public static List<CandleDesign> proved(Books books, PourWatch watch) {
    String pour = watch.batch().plan().card();
    boolean same =
        books
            .cards()
            .current(Drawers.POUR, pour)
            .map(c -> c.version() == watch.batch().plan().cardVersion())
            .orElse(false);
    return !same
        ? List.of()
        : books.cards().all(Drawers.CANDLE).stream()
            .filter(c -> c.body().pour().equals(pour))
            .filter(
                c ->
                    books
                        .burns()
                        .proof(c.code(), c.version())
                        .map(BurnTest.Proof::proved)
                        .orElse(false))
            .map(CardVersion::body)
            .toList();
  }

  private static Optional<CandleDesign> proved(Books books, PourWatch watch, String candle) {
    return proved(books, watch).stream().filter(d -> d.code().equals(candle)).findFirst();
  }
}

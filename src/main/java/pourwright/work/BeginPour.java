package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchPlan;
import pourwright.card.CandleDesign;
import pourwright.card.ResolvedCandle;
import pourwright.quantity.OutOfRange;

/**
 * Begins a pour: the candles of one pitcher, of one design or of several that share wax, scent and
 * load. Its walk is laid out from the cards as they are now.
 */
public final class BeginPour {
  private final Doing doing;
  private final StartBatch start;

  BeginPour(Doing doing, StartBatch start) {
    this.doing = doing;
    this.start = start;
  }

  /**
   * A pour from one pitcher.
   *
   * @param candles its candles, at least one, all of one pour card
   * @param topUpFraction share held back for a second pour
   * @param residueG what stays in the pitcher, in g; null for what the pour card says
   * @param forTest whether they are for a burn test only; a vessel of plaster asks for it until its
   *     wall was measured
   */
  public record Request(
      List<Of> candles, double topUpFraction, @Nullable Double residueG, boolean forTest) {
    /** Keeps its own copy. */
    public Request {
      candles = List.copyOf(candles);
    }

    /** A pour as usual. */
    public Request(List<Of> candles, double topUpFraction, @Nullable Double residueG) {
      this(candles, topUpFraction, residueG, false);
    }

    /** A pour of one candle design. */
    public Request(String candle, int count, double topUpFraction) {
      this(List.of(new Of(candle, count)), topUpFraction, null, false);
    }
  }

  /**
   * So many of a candle.
   *
   * @param candle code of the candle's card
   * @param count candles, 1 or more
   */
  public record Of(String candle, int count) {}

  /** Begins, or says what is missing, held, or does not fit the vessel while hot. */
  public Outcome<Batch> run(Act act, Request request) {
    Optional<Of> unknown =
        doing.look(
            books ->
                request.candles().stream()
                    .filter(c -> books.cards().current(Drawers.CANDLE, c.candle()).isEmpty())
                    .findFirst());
    if (unknown.isPresent()) {
      return Doing.notOnFile("candle " + unknown.get().candle());
    }
    if (request.candles().isEmpty()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE, "a pour of no candle", "name at least one candle");
    }
    Optional<String> plaster = doing.look(books -> PlasterGate.bars(books, request));
    if (plaster.isPresent()) {
      return Outcome.refused(
          Reason.VESSEL_IS_NOT_PROVED_TIGHT,
          plaster.get(),
          "pour at most "
              + PlasterGate.TEST_MOST
              + " for a burn test that reads the wall, and say so; none of them is sold");
    }
    try {
      return start.run(act, doing.look(books -> plan(books, request)));
    } catch (OutOfRange e) {
      return Outcome.refused(Reason.INPUT_CANNOT_BE, e.sentence(), e.hint());
    }
  }

  private static BatchPlan plan(Books books, Request request) {
    List<PourWalk.Part> parts = new ArrayList<>();
    for (Of of : request.candles()) {
      CardVersion<CandleDesign> card =
          books.cards().current(Drawers.CANDLE, of.candle()).orElseThrow();
      ResolvedCandle candle = card.body().resolve(Drawers.book(books));
      PourFill fill = PourFill.of(books, candle, request.topUpFraction());
      parts.add(new PourWalk.Part(candle, card.version(), fill, of.count()));
    }
    PourWalk.Wanted wanted =
        new PourWalk.Wanted(parts, request.topUpFraction(), request.residueG());
    String pour = parts.get(0).candle().design().pour();
    int pourVersion = books.cards().current(Drawers.POUR, pour).map(CardVersion::version).orElse(1);
    return PourWalk.plan(wanted, pourVersion);
  }
}

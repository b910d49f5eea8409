package pourwright.work;

import java.util.Optional;
import pourwright.batch.Batch;
import pourwright.batch.BatchPlan;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.card.ResolvedCandle;
import pourwright.quantity.OutOfRange;

/** Begins a pour of one candle design: its walk is laid out from the cards as they are now. */
public final class BeginPour {
  private final Doing doing;
  private final StartBatch start;

  BeginPour(Doing doing, StartBatch start) {
    this.doing = doing;
    this.start = start;
  }

  /**
   * A pour.
   *
   * @param candle code of the candle's card
   * @param count candles, 1 or more
   * @param topUpFraction share held back for a second pour
   */
  public record Request(String candle, int count, double topUpFraction) {}

  /** Begins, or says what is missing, held, or does not fit the vessel while hot. */
  public Outcome<Batch> run(Act act, Request request) {
    try {
      Optional<BatchPlan> plan = doing.look(books -> plan(books, request));
      return plan.isEmpty()
          ? Doing.notOnFile("candle " + request.candle())
          : start.run(act, plan.get());
    } catch (OutOfRange e) {
      return Outcome.refused(Reason.INPUT_CANNOT_BE, e.sentence(), e.hint());
    }
  }

  private static Optional<BatchPlan> plan(Books books, Request request) {
    Optional<CardVersion<CandleDesign>> candle =
        books.cards().current(Drawers.CANDLE, request.candle());
    if (candle.isEmpty()) {
      return Optional.empty();
    }
    CardBook book = Drawers.book(books);
    CandleDesign design = candle.get().body();
    int pourVersion =
        books.cards().current(Drawers.POUR, design.pour()).map(CardVersion::version).orElse(1);
    PourWalk.Wanted wanted =
        new PourWalk.Wanted(
            request.candle(), candle.get().version(), request.count(), request.topUpFraction());
    ResolvedCandle resolved = design.resolve(book);
    PourFill fill = PourFill.of(books, resolved, request.topUpFraction());
    return Optional.of(PourWalk.plan(resolved, fill, wanted, pourVersion));
  }
}

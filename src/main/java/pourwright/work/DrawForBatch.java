package pourwright.work;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.FirstExpiredFirstOut.Draw;
import pourwright.stock.FirstExpiredFirstOut.Line;
import pourwright.stock.Movement;

/** Draws a material for a batch, all of it or nothing. */
public final class DrawForBatch {
  private static final String VERB = "drew for a batch";
  private final Doing doing;

  DrawForBatch(Doing doing) {
    this.doing = doing;
  }

  /**
   * A draw.
   *
   * @param batch a running batch
   * @param material code
   * @param lot the lot to take it from; null for the one that expires first
   * @param amount above zero
   */
  public record Request(long batch, String material, @Nullable Long lot, Amount amount) {}

  /** Draws, or says why not. */
  public Outcome<List<Movement>> run(Act act, Request request) {
    return doing.once(
        act, VERB, turn -> draw(turn, request), (books, deed) -> books.lots().ofDeed(deed.id()));
  }

  private static Outcome<List<Movement>> draw(Turn turn, Request request) {
    Optional<Batch> batch = turn.books().batches().batch(request.batch());
    if (batch.isEmpty()) {
      return Doing.notOnFile("batch " + request.batch());
    }
    if (!request.amount().isPositive()) {
      return Outcome.refused(
          Reason.AMOUNT_MUST_BE_POSITIVE, "a draw of nothing", "give an amount above zero");
    }
    if (request.lot() != null) {
      Optional<Outcome<List<Movement>>> refusal =
          Drawing.refusal(turn, request.lot(), request.amount());
      if (refusal.isPresent()) {
        return refusal.get();
      }
    }
    Draw draw = Drawing.from(turn, request.material(), request.lot(), request.amount());
    if (draw.missing().isPositive()) {
      return Outcome.refused(
          Reason.LOT_WOULD_GO_NEGATIVE,
          Say.amount(draw.missing()) + " of " + request.material() + " is missing",
          "receive or count it first; held and expired lots are not drawn from");
    }
    Deed deed = turn.deed(Subject.of(Subject.Kind.BATCH, request.batch()));
    for (Line line : draw.lines()) {
      turn.books()
          .lots()
          .append(line.lot(), line.amount().negated(), Cause.DRAWN, request.batch(), deed);
    }
    return Turn.done(deed, turn.books().lots().ofDeed(deed.id()));
  }
}

package pourwright.work;

import java.util.Optional;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Movement;
import pourwright.stock.Shelf;

/** Puts back into its lot what a batch did not use. */
public final class ReturnToLot {
  private static final String VERB = "put back into a lot";
  private final Doing doing;

  ReturnToLot(Doing doing) {
    this.doing = doing;
  }

  /** Puts back no more than the batch had drawn from that lot. */
  public Outcome<Shelf> run(Act act, long batch, long lot, Amount amount) {
    return doing.once(
        act,
        VERB,
        turn -> putBack(turn, batch, lot, amount),
        (books, deed) -> Doing.known(books.lots().shelf(lot), deed));
  }

  private static Outcome<Shelf> putBack(Turn turn, long batch, long lot, Amount amount) {
    Optional<Shelf> shelf = turn.books().lots().shelf(lot);
    if (shelf.isEmpty()) {
      return Doing.notOnFile("lot " + lot);
    }
    Amount inBatch = Amount.none(shelf.get().lot().kind());
    for (Movement movement : turn.books().lots().ofBatch(batch)) {
      if (movement.lot() == lot) {
        inBatch = inBatch.minus(movement.change());
      }
    }
    if (amount.kind() != inBatch.kind() || !amount.isPositive() || amount.compareTo(inBatch) > 0) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          "the batch has " + Say.amount(inBatch) + " of that lot, " + Say.amount(amount) + " given",
          "give an amount above zero and up to " + Say.amount(inBatch));
    }
    Deed deed = turn.deed(Subject.of(Subject.Kind.LOT, lot));
    turn.books().lots().append(lot, amount, Cause.RETURNED, batch, deed);
    return Turn.done(deed, Doing.known(turn.books().lots().shelf(lot), deed));
  }
}

package pourwright.work;

import java.util.Optional;
import java.util.Set;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Shelf;

/** Takes an amount out of stock for good: waste, test, gift or sold as it is. */
public final class WriteOff {
  private static final String VERB = "wrote off";
  private static final Set<Cause> CAUSES = Set.of(Cause.WASTE, Cause.TEST, Cause.GIFT, Cause.SOLD);
  private final Doing doing;

  WriteOff(Doing doing) {
    this.doing = doing;
  }

  /**
   * A loss. A held lot may be thrown away, but not given away or sold.
   *
   * @param lot the lot
   * @param amount above zero, no more than is there
   * @param cause WASTE, TEST, GIFT or SOLD
   */
  public record Request(long lot, Amount amount, Cause cause) {}

  /** Writes off, or says why not. */
  public Outcome<Shelf> run(Act act, Request request) {
    return doing.once(
        act,
        VERB,
        turn -> writeOff(turn, request),
        (books, deed) -> Doing.known(books.lots().shelf(request.lot()), deed));
  }

  private static Outcome<Shelf> writeOff(Turn turn, Request request) {
    if (!CAUSES.contains(request.cause()) || !request.amount().isPositive()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          Say.amount(request.amount()) + " as " + request.cause().words(),
          "give an amount above zero and say waste, test, gift or sold");
    }
    Optional<Outcome<Shelf>> refusal = Drawing.refusal(turn, request.lot(), request.amount());
    boolean heldWaste =
        request.cause() == Cause.WASTE
            && refusal.isPresent()
            && refusal.get() instanceof Outcome.Refused<Shelf> refused
            && refused.reason() == Reason.IT_IS_HELD;
    if (refusal.isPresent() && !heldWaste) {
      return refusal.get();
    }
    Shelf shelf = turn.books().lots().shelf(request.lot()).orElseThrow();
    if (shelf.onHand().compareTo(request.amount()) < 0) {
      return Outcome.refused(
          Reason.LOT_WOULD_GO_NEGATIVE,
          "the lot has " + Say.amount(shelf.onHand()),
          "write off no more than that");
    }
    Deed deed = turn.deed(Subject.of(Subject.Kind.LOT, request.lot()));
    turn.books()
        .lots()
        .append(request.lot(), request.amount().negated(), request.cause(), null, deed);
    return Turn.done(deed, Doing.known(turn.books().lots().shelf(request.lot()), deed));
  }
}

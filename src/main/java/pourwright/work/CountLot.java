package pourwright.work;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Shelf;

/** Counts or weighs a lot at the shelf; the difference to the ledger becomes a movement. */
public final class CountLot {
  private static final String VERB = "counted a lot";
  private final Doing doing;

  CountLot(Doing doing) {
    this.doing = doing;
  }

  /**
   * A count.
   *
   * @param lot the lot
   * @param found what is there without the tub, zero or more
   * @param seen what the ledger said when counting began; null to count whatever it says now
   */
  public record Request(long lot, Amount found, @Nullable Amount seen) {}

  /** Counts; a note in the act explains the difference. */
  public Outcome<Shelf> run(Act act, Request request) {
    return doing.once(
        act,
        VERB,
        turn -> count(turn, request),
        (books, deed) -> Doing.known(books.lots().shelf(request.lot()), deed));
  }

  private static Outcome<Shelf> count(Turn turn, Request request) {
    Optional<Shelf> shelf = turn.books().lots().shelf(request.lot());
    if (shelf.isEmpty()) {
      return Doing.notOnFile("lot " + request.lot());
    }
    Amount onHand = shelf.get().onHand();
    if (request.found().kind() != onHand.kind()) {
      return Outcome.refused(
          Reason.AMOUNT_IS_OF_ANOTHER_KIND,
          "this lot is kept in " + onHand.usualUnit(),
          "give the count in " + onHand.usualUnit());
    }
    if (request.found().isNegative()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          "a count of " + Say.amount(request.found()),
          "give what is there, zero or more; take the tub's own weight off once");
    }
    if (request.seen() != null && request.seen().compareTo(onHand) != 0) {
      return Outcome.refused(
          Reason.IT_WAS_CHANGED_MEANWHILE,
          "while you counted, the ledger went from "
              + Say.amount(request.seen())
              + " to "
              + Say.amount(onHand),
          "look whether your count was before or after that, and send it again");
    }
    Deed deed = turn.deed(Subject.of(Subject.Kind.LOT, request.lot()));
    Amount difference = request.found().minus(onHand);
    if (!difference.isNone()) {
      turn.books().lots().append(request.lot(), difference, Cause.COUNTED, null, deed);
    }
    return Turn.done(deed, Doing.known(turn.books().lots().shelf(request.lot()), deed));
  }
}

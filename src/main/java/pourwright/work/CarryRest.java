package pourwright.work;

import java.util.List;
import java.util.Optional;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.Carried;
import pourwright.material.UnitKind;
import pourwright.stock.Amount;
import pourwright.stock.Lot;
import pourwright.stock.Movement;
import pourwright.stock.Trace;

/**
 * Takes what was left of a finished pour into one that runs. From then on all that the first was
 * made of is in the second, too, and its share of the cost goes along.
 */
public final class CarryRest {
  private static final String VERB = "carried a rest into a pour";
  private final Doing doing;

  CarryRest(Doing doing) {
    this.doing = doing;
  }

  /**
   * A rest.
   *
   * @param from a finished pour
   * @param into a running pour
   * @param amount a mass above zero, no more than the first pour drew
   */
  public record Request(long from, long into, Amount amount) {}

  /** Carries it over, or says why not. */
  public Outcome<Carried> run(Act act, Request request) {
    return doing.once(
        act,
        VERB,
        turn -> carry(turn, request),
        (books, deed) -> Doing.known(books.batches().carriedBy(deed.id()), deed));
  }

  private static Outcome<Carried> carry(Turn turn, Request request) {
    Books books = turn.books();
    Optional<Outcome<Carried>> refusal = Finishing.refusal(turn, request.into(), BatchKind.POUR);
    if (refusal.isPresent()) {
      return refusal.get();
    }
    Optional<Batch> from = books.batches().batch(request.from());
    if (from.isEmpty() || from.get().plan().kind() != BatchKind.POUR) {
      return Doing.notOnFile("pour " + request.from());
    }
    if (from.get().isRunning()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          "pour " + from.get().mark().text() + " is not finished",
          "finish it first; only then is something left of it");
    }
    List<String> closed =
        PourWatch.of(books, request.from()).map(LeftWax::closed).orElse(List.of());
    if (!closed.isEmpty()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          closed.get(0),
          "keep it for unwicked pieces or let it go to waste");
    }
    Amount left = left(books, request.from());
    Amount amount = request.amount();
    if (amount.kind() != UnitKind.MASS || !amount.isPositive() || amount.compareTo(left) > 0) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          Say.amount(amount) + " left of a pour that had " + Say.amount(left),
          "weigh the rest and give a mass above zero, up to that");
    }
    Optional<String> held = held(books, request.from());
    if (held.isPresent()) {
      return Outcome.refused(
          Reason.IT_IS_HELD,
          held.get() + " is in it and is on hold",
          "leave the rest aside, or have the hold lifted by name");
    }
    Deed deed = turn.deed(Subject.of(Subject.Kind.BATCH, request.into()));
    return Turn.done(
        deed,
        books.batches().append(new Carried(0, request.from(), request.into(), amount, deed.id())));
  }

  /** What a pour took in and has not given on: the most that can be left of it. */
  public static Amount left(Books books, long pour) {
    Amount left = Amount.none(UnitKind.MASS);
    for (Movement movement : books.lots().ofBatch(pour)) {
      if (movement.change().kind() == UnitKind.MASS) {
        left = left.minus(movement.change());
      }
    }
    for (Carried carried : books.batches().carried(pour)) {
      left = carried.into() == pour ? left.plus(carried.amount()) : left.minus(carried.amount());
    }
    return left;
  }

  private static Optional<String> held(Books books, long pour) {
    if (books.holds().standing().isEmpty()) {
      return Optional.empty();
    }
    Trace.Reached reached =
        Trace.walk(new Trace.Node(Trace.Kind.BATCH, pour), books.trace()::back, false);
    return reached.of(Trace.Kind.LOT).stream()
        .flatMap(lot -> books.lots().shelf(lot).stream())
        .filter(pourwright.stock.Shelf::held)
        .map(pourwright.stock.Shelf::lot)
        .map((Lot lot) -> lot.material() + " lot " + lot.code())
        .findFirst();
  }
}

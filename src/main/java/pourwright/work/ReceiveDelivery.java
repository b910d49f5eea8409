package pourwright.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Lot;
import pourwright.stock.Price;
import pourwright.stock.Shelf;

/** Takes a whole delivery in: every line becomes a lot, all of them or none, in one deed. */
public final class ReceiveDelivery {
  private static final String VERB = "received a delivery";
  private final Doing doing;

  ReceiveDelivery(Doing doing) {
    this.doing = doing;
  }

  /**
   * A delivery.
   *
   * @param supplier code of the supplier's card or her name, null where it is not known
   * @param receivedOn the day it came, null for today
   */
  public record Request(
      Delivery delivery,
      Delivery.Terms terms,
      @Nullable String supplier,
      @Nullable LocalDate receivedOn) {}

  /** Receives, or says which line cannot be. */
  public Outcome<List<Shelf>> run(Act act, Request request) {
    return doing.once(
        act,
        VERB,
        turn -> receive(turn, request),
        (books, deed) ->
            books.lots().ofDeed(deed.id()).stream()
                .flatMap(m -> books.lots().shelf(m.lot()).stream())
                .toList());
  }

  private static Outcome<List<Shelf>> receive(Turn turn, Request request) {
    LotBook lots = turn.books().lots();
    Set<String> seen = new HashSet<>();
    for (Delivery.Line line : request.delivery().lines()) {
      String name = line.material().code() + " lot " + line.lot();
      boolean known =
          !line.lot().isEmpty() && lots.shelf(line.material().code(), line.lot()).isPresent();
      if (known || (!line.lot().isEmpty() && !seen.add(name))) {
        return Outcome.refused(
            Reason.ALREADY_ON_FILE,
            "line " + line.number() + ": " + name + (known ? " is in the books" : " comes twice"),
            "count that lot, or add a letter to the code if this is a new delivery of it");
      }
      Optional<Shelf> other =
          lots.list(line.material().code(), null, 1).items().stream().findFirst();
      if (other.isPresent() && other.get().lot().kind() != line.amount().kind()) {
        return Outcome.refused(
            Reason.AMOUNT_IS_OF_ANOTHER_KIND,
            "line " + line.number() + ": it is kept in " + other.get().onHand().usualUnit(),
            "give the amount in " + other.get().onHand().usualUnit());
      }
    }
    List<Optional<Long>> costs = request.delivery().costs(request.terms());
    String currency = turn.books().settings().value("currency").orElse("EUR");
    LocalDate day = request.receivedOn() == null ? turn.today() : request.receivedOn();
    Deed deed = turn.deed(Subject.of(Subject.Kind.LOT, lots.nextId()));
    List<Shelf> made = new ArrayList<>();
    for (int i = 0; i < costs.size(); i++) {
      Delivery.Line line = request.delivery().lines().get(i);
      long id = lots.nextId();
      Amount amount = line.amount();
      lots.add(
          new Lot(
              id,
              line.material().code(),
              line.lot().isEmpty() ? "L" + id : line.lot(),
              amount.kind(),
              request.supplier(),
              day,
              null,
              line.expires(),
              costs.get(i).map(c -> new Price(c, currency)).orElse(null),
              deed.id()));
      lots.append(id, amount, Cause.RECEIVED, null, deed);
      made.add(Doing.known(lots.shelf(id), deed));
    }
    return Turn.done(deed, made);
  }
}

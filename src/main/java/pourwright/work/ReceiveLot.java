package pourwright.work;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Lot;
import pourwright.stock.Price;
import pourwright.stock.Shelf;

/** Takes a delivery of a material into stock as a lot of its own. */
public final class ReceiveLot {
  private static final String VERB = "received a lot";
  private final Doing doing;

  ReceiveLot(Doing doing) {
    this.doing = doing;
  }

  /**
   * A delivery.
   *
   * @param material code of the material's card
   * @param code lot code on the pack; blank for one of our own making
   * @param amount above zero
   * @param supplier code of the supplier's card, if known
   * @param receivedOn the day it came; null for today
   * @param expiresOn the last good day, if there is one
   * @param price what the whole amount cost with its share of shipping, if known
   */
  public record Request(
      String material,
      String code,
      Amount amount,
      @Nullable String supplier,
      @Nullable LocalDate receivedOn,
      @Nullable LocalDate expiresOn,
      @Nullable Price price) {

    /** A delivery of which no more is known. */
    public static Request of(String material, String code, Amount amount) {
      return new Request(material, code, amount, null, null, null, null);
    }
  }

  /** Receives, or says why not. */
  public Outcome<Shelf> run(Act act, Request request) {
    return doing.once(act, VERB, turn -> receive(turn, request), ReceiveLot::again);
  }

  private static Shelf again(Books books, Deed deed) {
    return Doing.known(books.lots().shelf(deed.subject().number()), deed);
  }

  private static Outcome<Shelf> receive(Turn turn, Request request) {
    LotBook lots = turn.books().lots();
    Optional<Outcome<Shelf>> refusal = refusal(turn, request);
    if (refusal.isPresent()) {
      return refusal.get();
    }
    long id = lots.nextId();
    String code = request.code().isBlank() ? "L" + id : request.code().strip();
    Deed deed = turn.deed(Subject.of(Subject.Kind.LOT, id));
    LocalDate day = request.receivedOn() == null ? turn.today() : request.receivedOn();
    Lot lot =
        new Lot(
            id,
            request.material(),
            code,
            request.amount().kind(),
            request.supplier(),
            day,
            null,
            request.expiresOn(),
            request.price(),
            deed.id());
    lots.add(lot);
    lots.append(id, request.amount(), Cause.RECEIVED, null, deed);
    return Turn.done(deed, Doing.known(lots.shelf(id), deed));
  }

  private static Optional<Outcome<Shelf>> refusal(Turn turn, Request request) {
    LotBook lots = turn.books().lots();
    if (!request.amount().isPositive()) {
      return Optional.of(
          Outcome.refused(
              Reason.AMOUNT_MUST_BE_POSITIVE,
              "a delivery of " + Say.amount(request.amount()),
              "give what came in, above zero"));
    }
    if (!request.code().isBlank()
        && lots.shelf(request.material(), request.code().strip()).isPresent()) {
      return Optional.of(
          Outcome.refused(
              Reason.ALREADY_ON_FILE,
              "lot " + request.code().strip() + " of " + request.material() + " is in the books",
              "count that lot, or add a letter to the code if this is a new delivery of it"));
    }
    Optional<Shelf> other = lots.list(request.material(), null, 1).items().stream().findFirst();
    if (other.isPresent() && other.get().lot().kind() != request.amount().kind()) {
      return Optional.of(
          Outcome.refused(
              Reason.AMOUNT_IS_OF_ANOTHER_KIND,
              request.material() + " is kept in " + other.get().onHand().usualUnit(),
              "give the amount in " + other.get().onHand().usualUnit()));
    }
    Optional<String> currency = turn.books().settings().value("currency");
    if (request.price() != null
        && currency.isPresent()
        && !currency.get().equals(request.price().currency())) {
      return Optional.of(
          Outcome.refused(
              Reason.PRICE_IS_IN_ANOTHER_CURRENCY,
              "the price is in "
                  + request.price().currency()
                  + " and the studio keeps its books in "
                  + currency.get(),
              "convert it at the rate you paid and give it in " + currency.get()));
    }
    return Optional.empty();
  }
}

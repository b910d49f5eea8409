package pourwright.work;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Move;
import pourwright.batch.Piece;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceLife;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.cost.MoneyKind;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;

/**
 * Writes down what came after a sale, and what follows from it in the same deed: a piece that comes
 * back is in the studio again, money that is given back leaves the books, a replacement is an order
 * that costs nothing.
 */
public final class RecordAfterSale {
  private static final String VERB = "noted what came after a sale";
  private final Doing doing;

  RecordAfterSale(Doing doing) {
    this.doing = doing;
  }

  /**
   * What came.
   *
   * @param kind what it is
   * @param piece the piece, null where only the order is known
   * @param order the order, null where only the piece is known; found by the piece then
   * @param what for an incident what was seen; else an empty string
   * @param learnedOn the day the studio learned of it; null for today
   * @param refundMinor money given back, 0 for none
   */
  public record Request(
      AfterSale.Kind kind,
      @Nullable Long piece,
      @Nullable String order,
      String what,
      @Nullable LocalDate learnedOn,
      long refundMinor) {}

  /** Writes it, or says why not; the note of the act is what was said. */
  public Outcome<AfterSale> run(Act act, Request request) {
    return doing.once(
        act,
        VERB,
        turn -> note(turn, request),
        (books, deed) ->
            Doing.known(books.afterSales().ofDeed(deed.id()).stream().findFirst(), deed));
  }

  private static Outcome<AfterSale> note(Turn turn, Request request) {
    Books books = turn.books();
    Optional<Piece> piece = Optional.ofNullable(request.piece()).flatMap(books.pieces()::piece);
    Optional<OrderLine> line =
        piece.flatMap(p -> PieceState.orderLineOf(p.state())).flatMap(books.orders()::line);
    String order =
        request.order() != null ? request.order() : line.map(OrderLine::order).orElse(null);
    Optional<Outcome<AfterSale>> refusal = refusal(turn, request, piece, order);
    if (refusal.isPresent()) {
      return refusal.get();
    }
    PieceEvent back = null;
    if (request.kind() == AfterSale.Kind.RETURN && piece.isPresent()) {
      back =
          new PieceEvent(
              0, piece.get().id(), PieceStep.CAME_BACK, turn.now(), null, null, null, null, 0);
      Move move = new PieceLife(piece.get().state(), piece.get().grade()).after(back);
      if (move instanceof Move.Barred barred) {
        return Outcome.refused(
            Reason.PIECE_IS_NOT_THERE_YET,
            piece.get().mark().text() + ": " + barred.sentence(),
            "only a piece that was sold comes back");
      }
    }
    Deed deed =
        turn.deed(
            piece.isPresent()
                ? Subject.of(Subject.Kind.PIECE, piece.get().id())
                : new Subject(Subject.Kind.ORDER, order == null ? "" : order));
    if (back != null) {
      books.pieces().append(back.in(deed.id()));
    }
    LocalDate day = request.learnedOn() == null ? turn.today() : request.learnedOn();
    if (request.refundMinor() > 0) {
      refund(turn, order, request.refundMinor(), deed);
    }
    if (request.kind() == AfterSale.Kind.REPLACEMENT && line.isPresent() && order != null) {
      replace(turn, order, line.get(), deed);
    }
    AfterSale entry =
        new AfterSale(
            0,
            request.kind(),
            piece.map(Piece::id).orElse(null),
            order,
            request.what(),
            day,
            turn.act().note(),
            0);
    return Turn.done(deed, books.afterSales().append(entry, deed));
  }

  private static Optional<Outcome<AfterSale>> refusal(
      Turn turn, Request request, Optional<Piece> piece, @Nullable String order) {
    if (request.piece() != null && piece.isEmpty()) {
      return Optional.of(Doing.notOnFile("piece " + request.piece()));
    }
    if (order != null && turn.books().orders().order(order).isEmpty()) {
      return Optional.of(Doing.notOnFile("order " + order));
    }
    if (piece.isEmpty() && order == null) {
      return Optional.of(
          Outcome.refused(
              Reason.INPUT_CANNOT_BE,
              "neither a mark nor an order is given",
              "give the mark on the piece, or the order's number"));
    }
    LocalDate learned = request.learnedOn();
    if (learned != null && learned.isAfter(turn.today())) {
      return Optional.of(
          Outcome.refused(
              Reason.INPUT_CANNOT_BE, learned + " lies in the future", "give the day you heard"));
    }
    if (request.refundMinor() < 0) {
      return Optional.of(
          Outcome.refused(
              Reason.INPUT_CANNOT_BE, "less than nothing was given back", "give what was paid"));
    }
    if (request.kind() == AfterSale.Kind.REPLACEMENT && piece.isEmpty()) {
      return Optional.of(
          Outcome.refused(
              Reason.INPUT_CANNOT_BE,
              "nothing says what is to be replaced",
              "give the mark of the piece; or take a new order by hand"));
    }
    return Optional.empty();
  }

  private static void refund(Turn turn, @Nullable String order, long minor, Deed deed) {
    String currency = turn.books().settings().value("currency").orElse("EUR");
    turn.books()
        .money()
        .append(
            new MoneyFact(0, MoneyKind.REFUND, order, null, minor, currency, turn.today(), "", 0),
            deed);
  }

  /** An order of the same candle that costs nothing, numbered after the first. */
  private static void replace(Turn turn, String order, OrderLine line, Deed deed) {
    OrderBook orders = turn.books().orders();
    Order first = orders.order(order).orElseThrow();
    int nth = 1;
    while (orders.order(order + "-R" + nth).isPresent()) {
      nth++;
    }
    String number = order + "-R" + nth;
    OrderLine again = new OrderLine(number, line.design(), 1, 1, null, "replacement");
    orders.put(
        new Order(number, first.channel(), first.customer(), OrderState.OPEN, List.of(again)),
        deed);
    long id = orders.put(again, deed);
    orders.retellOrdersOf(deed.id());
    String currency = turn.books().settings().value("currency").orElse("EUR");
    turn.books()
        .money()
        .append(
            new MoneyFact(
                0, MoneyKind.AGREED, number, id, 0, currency, turn.today(), "replacement", 0),
            deed);
  }
}

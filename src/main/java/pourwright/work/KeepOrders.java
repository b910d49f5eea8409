package pourwright.work;

import java.util.List;
import java.util.Optional;
import pourwright.order.ImportChanges;
import pourwright.order.Order;
import pourwright.order.OrderState;

/** Orders by hand: taking one, changing it, moving it on its way. */
public final class KeepOrders {
  private static final String TAKEN = "took an order";
  private static final String MOVED = "moved an order on";
  private final Doing doing;

  KeepOrders(Doing doing) {
    this.doing = doing;
  }

  /** Takes a new order or changes one that is on file to what is given. */
  public Outcome<Order> take(Act act, Order order) {
    return doing.once(
        act,
        TAKEN,
        turn -> {
          OrderBook orders = turn.books().orders();
          if (order.lines().isEmpty()) {
            return Outcome.refused(
                Reason.INPUT_CANNOT_BE, "an order without a line", "say which candle and how many");
          }
          List<pourwright.order.OrderLine> before =
              orders.order(order.number()).map(Order::lines).orElse(List.of());
          ImportChanges changes = ImportChanges.between(before, order.lines());
          Deed deed = turn.deed(new Subject(Subject.Kind.ORDER, order.number()));
          orders.put(order, deed);
          changes.added().forEach(line -> orders.put(line, deed));
          changes.edited().forEach(edit -> orders.put(edit.after(), deed));
          changes.cancelled().forEach(line -> orders.takeOff(line.key(), deed));
          orders.retellOrdersOf(deed.id());
          return Turn.done(deed, Doing.known(orders.order(order.number()), deed));
        },
        KeepOrders::again);
  }

  /** Moves an order on its way: picked, sent, cancelled, or open again. */
  public Outcome<Order> move(Act act, String number, OrderState state) {
    return doing.once(
        act,
        MOVED,
        turn -> {
          OrderBook orders = turn.books().orders();
          Optional<Order> order = orders.order(number);
          if (order.isEmpty()) {
            return Doing.notOnFile("order " + number);
          }
          Order now = order.get();
          if (state == OrderState.PICKED || state == OrderState.SENT) {
            Outcome<Order> held = held(turn, number);
            if (held != null) {
              return held;
            }
          }
          Deed deed = turn.deed(new Subject(Subject.Kind.ORDER, number));
          orders.put(
              new Order(now.number(), now.channel(), now.customer(), state, now.lines()), deed);
          orders.retellOrdersOf(deed.id());
          return Turn.done(deed, Doing.known(orders.order(number), deed));
        },
        KeepOrders::again);
  }

  /** A piece that was picked before the hold came does not leave either. */
  private static @org.jspecify.annotations.Nullable Outcome<Order> held(Turn turn, String number) {
    if (turn.books().holds().standing().isEmpty()) {
      return null;
    }
    for (long id : turn.books().recalls().pickedFor(number)) {
      java.util.List<Hold> holds = turn.books().holds().stopping(id);
      if (!holds.isEmpty()) {
        String mark =
            turn.books().pieces().piece(id).map(p -> p.mark().text()).orElse("piece " + id);
        return Outcome.refused(
            Reason.IT_IS_HELD,
            mark + " is stopped by a hold: " + holds.get(0).reason(),
            "put it back and take another piece, or have the hold lifted by name");
      }
    }
    return null;
  }

  private static Order again(Books books, Deed deed) {
    return Doing.known(books.orders().order(deed.subject().id()), deed);
  }
}

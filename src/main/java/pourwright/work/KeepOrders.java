package pourwright.work;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.order.ImportChanges;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.plan.SeatClass;

/** Orders by hand: taking one, changing it, moving it on its way. */
public final class KeepOrders {
  private static final String TAKEN = "took an order";
  private static final String CLASS = "took a class on";
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
          Deed deed = turn.deed(new Subject(Subject.Kind.ORDER, order.number()));
          write(orders, order, deed);
          return Turn.done(deed, Doing.known(orders.order(order.number()), deed));
        },
        KeepOrders::again);
  }

  private static void write(OrderBook orders, Order order, Deed deed) {
    List<OrderLine> before = orders.order(order.number()).map(Order::lines).orElse(List.of());
    ImportChanges changes = ImportChanges.between(before, order.lines());
    orders.put(order, deed);
    changes.added().forEach(line -> orders.put(line, deed));
    changes.edited().forEach(edit -> orders.put(edit.after(), deed));
    changes.cancelled().forEach(line -> orders.takeOff(line.key(), deed));
    orders.retellOrdersOf(deed.id());
  }

  /**
   * Takes a class on: an order of seats, with its hours, as one deed. A class that was called off
   * may be taken on again; the day must not be over.
   */
  public Outcome<Order> takeClass(Act act, SeatClass taught) {
    return doing.once(act, CLASS, turn -> classTaken(turn, taught), KeepOrders::again);
  }

  private static Outcome<Order> classTaken(Turn turn, SeatClass taught) {
    OrderBook orders = turn.books().orders();
    String number = taught.order();
    if (taught.day().isBefore(turn.today())) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE, taught.day() + " is over", "give the day of the class");
    }
    if (orders.order(number).filter(o -> o.state() != OrderState.CANCELLED).isPresent()) {
      return Outcome.refused(
          Reason.ALREADY_ON_FILE,
          "there is a class at that hour already",
          "call it off first, or begin at another minute");
    }
    Deed deed = turn.deed(new Subject(Subject.Kind.ORDER, number));
    OrderLine seats = new OrderLine(number, taught.design(), 1, taught.seats(), taught.day(), null);
    write(orders, new Order(number, Classes.CHANNEL, null, OrderState.OPEN, List.of(seats)), deed);
    turn.books().settings().put(Classes.key(number), Classes.value(taught), deed.id());
    return Turn.done(deed, Doing.known(orders.order(number), deed));
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
            Outcome<Order> stays = stays(turn, number);
            if (stays != null) {
              return stays;
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

  /** What was picked before the hold came, or before the word was taken back, stays here too. */
  private static @Nullable Outcome<Order> stays(Turn turn, String number) {
    List<Long> picked = turn.books().recalls().pickedFor(number);
    Outcome<Order> held = held(turn, picked);
    return held != null
        ? held
        : ForSale.refusal(
            turn.books(),
            picked.stream().flatMap(id -> turn.books().pieces().piece(id).stream()).toList());
  }

  private static @Nullable Outcome<Order> held(Turn turn, List<Long> picked) {
    if (turn.books().holds().standing().isEmpty()) {
      return null;
    }
    for (long id : picked) {
      List<Hold> holds = turn.books().holds().stopping(id);
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

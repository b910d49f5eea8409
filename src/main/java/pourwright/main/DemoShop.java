package pourwright.main;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.batch.PieceStep;
import pourwright.card.CandleDesign;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.work.AdvancePieces;

/** Orders of the demo studio: they come with the season, some go out late. */
final class DemoShop {
  /** How much is ordered in each month, January first; invented. */
  private static final double[] SEASON = {
    0.6, 0.7, 0.8, 0.8, 0.9, 0.6, 0.5, 0.6, 0.9, 1.2, 1.9, 2.3
  };

  private final DemoHistory history;
  private final DemoMaking making;
  private final List<CandleDesign> designs;
  private final Map<String, Order> open = new LinkedHashMap<>();
  private int number = 1000;

  DemoShop(DemoHistory history, DemoMaking making, List<CandleDesign> designs) {
    this.history = history;
    this.making = making;
    this.designs = designs;
  }

  /** How much is ordered on a day, 1 on the average of a year. */
  static double season(LocalDate day) {
    return SEASON[day.getMonthValue() - 1];
  }

  /** Pieces that open orders want of a design. */
  int wanted(String design) {
    return open.values().stream()
        .flatMap(o -> o.lines().stream())
        .filter(l -> l.design().equals(design))
        .mapToInt(OrderLine::quantity)
        .sum();
  }

  /** Takes an order of one to three lines. */
  void order(int piecesAbout) {
    String no = "U" + number++;
    List<OrderLine> lines = new ArrayList<>();
    LocalDate due = history.today().plusDays(21 + history.random().nextInt(40));
    int count = 1 + history.random().nextInt(3);
    for (int i = 0; i < count; i++) {
      String design = designs.get(popular()).code();
      if (lines.stream().noneMatch(l -> l.design().equals(design))) {
        int pieces = 1 + history.random().nextInt(Math.max(1, piecesAbout));
        lines.add(new OrderLine(no, design, 1, pieces, due, null));
      }
    }
    String channel = List.of("shop", "shop", "stall", "wholesale").get(history.random().nextInt(4));
    Order order = new Order(no, channel, null, OrderState.OPEN, lines);
    history.studio().orders.take(history.act(), order);
    open.put(no, order);
  }

  /** Some designs sell better: an index that falls off. */
  private int popular() {
    double u = history.random().nextDouble();
    return (int) (designs.size() * u * u);
  }

  /** Picks and sends what can be filled from the shelf, oldest order first. */
  void send() {
    for (Order order : new ArrayList<>(open.values())) {
      boolean enough =
          order.lines().stream().allMatch(l -> making.shelf(l.design()).size() >= l.quantity());
      if (enough) {
        fill(order);
        open.remove(order.number());
      }
    }
  }

  private void fill(Order order) {
    Map<OrderLine.Key, Long> ids =
        history.studio().look(books -> books.orders().lineIds(order.number()));
    for (OrderLine line : order.lines()) {
      Deque<Long> shelf = making.shelf(line.design());
      List<Long> pieces = new ArrayList<>();
      for (int i = 0; i < line.quantity(); i++) {
        pieces.add(shelf.removeFirst());
      }
      Long id = ids.get(line.key());
      move(pieces, PieceStep.PICKED, id);
      move(pieces, PieceStep.SOLD, id);
    }
    history.studio().orders.move(history.act(), order.number(), OrderState.SENT);
  }

  private void move(
      List<Long> pieces, PieceStep step, @org.jspecify.annotations.Nullable Long line) {
    history
        .studio()
        .advancePieces
        .run(history.act(), new AdvancePieces.Request(pieces, step, null, line));
  }
}

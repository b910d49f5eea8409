package pourwright.main;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import pourwright.batch.PieceStep;
import pourwright.card.CandleDesign;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.plan.InHand;
import pourwright.plan.VesselKind;
import pourwright.work.AdvancePieces;

/** Orders of the demo studio: they come with the season, some go out late. */
final class DemoShop {
  /** How much is ordered in each month, January first; invented. */
  private static final double[] SEASON = {
    0.6, 0.7, 0.8, 0.8, 0.9, 0.6, 0.5, 0.6, 0.9, 1.2, 1.9, 2.3
  };

  private static final int PATIENCE_DAYS = 24;

  /** Of an order in a busy studio, on the average. */
  private static final double PIECES_OF_AN_ORDER = 4.4;

  private final DemoHistory history;
  private final DemoMaking making;
  private final List<CandleDesign> designs;
  private final Predicate<String> proved;
  private final Map<String, Order> open = new LinkedHashMap<>();
  private final Map<String, OrderLine> asked = new LinkedHashMap<>();
  private @Nullable OrderLine late;
  private int number = 1000;

  /**
   * @param proved whether a word for sale stands on a design; nothing else is sent
   */
  DemoShop(
      DemoHistory history,
      DemoMaking making,
      List<CandleDesign> designs,
      Predicate<String> proved) {
    this.history = history;
    this.proved = proved;
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

  /** Pieces of a design that are ordered in a week on the average, by how it sells. */
  double aWeek(CandleDesign design) {
    double n = designs.size();
    int at = designs.indexOf(design);
    double share = Math.sqrt((at + 1) / n) - Math.sqrt(at / n);
    return share * history.size().ordersPerWeek() * PIECES_OF_AN_ORDER * season(history.today());
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

  /**
   * Picks and sends what can be filled from the shelf, oldest order first. Who has waited too long
   * takes her order back.
   */
  void send() {
    LocalDate patience = history.today().minusDays(PATIENCE_DAYS);
    for (Order order : new ArrayList<>(open.values())) {
      boolean enough =
          order.lines().stream()
              .allMatch(l -> making.free(l.design(), l.quantity()) >= l.quantity());
      if (enough && order.lines().stream().allMatch(l -> proved.test(l.design()))) {
        if (fill(order)) {
          open.remove(order.number());
        }
      } else if (order.dueOn().filter(due -> due.isBefore(patience)).isPresent()) {
        history.studio().orders.move(history.act(), order.number(), OrderState.CANCELLED);
        open.remove(order.number());
      }
    }
  }

  /** An order for the scarcest design that was taken too lightly. */
  void promiseTooMuch(LocalDate due, InHand have) {
    CandleDesign design = scarcest(have).get(0);
    late = new OrderLine("U" + number++, design.code(), 1, 5, due, null);
    keep("wholesale", late);
  }

  /**
   * What came in last: a few pieces more than there are, for days to come; and the buyer of the
   * late order wants three more than the shelf can give.
   */
  void lastOrders(InHand have) {
    OrderLine before = late;
    if (before != null) {
      int pieces = Math.max(before.quantity(), have.candles().getOrDefault(before.design(), 0) + 3);
      keep(
          "wholesale",
          new OrderLine(before.order(), before.design(), 1, pieces, before.dueOn(), null));
    }
    int days = 20;
    for (CandleDesign design : scarcest(have).subList(0, 3)) {
      want(design, spare(have, design) + 2 + history.random().nextInt(3), days);
      days += 14;
    }
    CandleDesign toCast =
        scarcest(have).stream()
            .min(Comparator.comparingInt(d -> spare(have, d) + vessels(have, d)))
            .orElseThrow();
    want(toCast, spare(have, toCast) + vessels(have, toCast) + 3, 62);
  }

  private static int vessels(InHand have, CandleDesign design) {
    return have.vessels().getOrDefault(VesselKind.of(design), 0);
  }

  private void want(CandleDesign design, int pieces, int inDays) {
    LocalDate due = history.today().plusDays(inDays);
    keep(
        pieces > 9 ? "wholesale" : "shop",
        new OrderLine("U" + number++, design.code(), 1, pieces, due, null));
  }

  private void keep(String channel, OrderLine line) {
    Order order = new Order(line.order(), channel, null, OrderState.OPEN, List.of(line));
    history.studio().orders.take(history.act(), order);
    asked.put(line.order(), line);
  }

  /** How many of a design are there that no order waits for. */
  private int spare(InHand have, CandleDesign design) {
    int there = have.candles().getOrDefault(design.code(), 0);
    int also =
        asked.values().stream()
            .filter(l -> l.design().equals(design.code()))
            .mapToInt(OrderLine::quantity)
            .sum();
    return Math.max(0, there - wanted(design.code()) - also);
  }

  /** Designs other than that of the late order, those with the fewest pieces to spare first. */
  private List<CandleDesign> scarcest(InHand have) {
    OrderLine not = late;
    return designs.stream()
        .filter(d -> not == null || !d.code().equals(not.design()))
        .sorted(Comparator.comparingInt(d -> spare(have, d)))
        .toList();
  }

  /** Picks, sells and sends; what waits for a check burn goes back and its order stays open. */
  private boolean fill(Order order) {
    Map<OrderLine.Key, Long> ids =
        history.studio().look(books -> books.orders().lineIds(order.number()));
    Map<Long, List<Long>> picked = new LinkedHashMap<>();
    for (OrderLine line : order.lines()) {
      Deque<Long> shelf = making.shelf(line.design());
      List<Long> pieces = new ArrayList<>();
      for (int i = 0; i < line.quantity(); i++) {
        pieces.add(shelf.removeFirst());
      }
      Long id = ids.get(line.key());
      if (!move(pieces, PieceStep.PICKED, id)) {
        putBack(line, pieces);
        for (OrderLine before : order.lines()) {
          Long beforeId = ids.get(before.key());
          List<Long> again = beforeId == null ? null : picked.get(beforeId);
          if (again != null) {
            move(again, PieceStep.UNPICKED, null);
            putBack(before, again);
          }
        }
        return false;
      }
      if (id != null) {
        picked.put(id, pieces);
      }
    }
    picked.forEach((id, pieces) -> move(pieces, PieceStep.SOLD, id));
    history.studio().orders.move(history.act(), order.number(), OrderState.SENT);
    return true;
  }

  /** Whether a word for sale stands on a design. */
  boolean maySell(String design) {
    return proved.test(design);
  }

  /** The same for one piece: its lots have had their check burn. */
  boolean maySell(String design, long piece) {
    return maySell(design) && making.lots().areBurnt(piece);
  }

  /** One piece, chosen, goes to a buyer who is known by name. */
  void sellTo(String customer, String design, long piece) {
    String no = "U" + number++;
    OrderLine line = new OrderLine(no, design, 1, 1, history.today().plusDays(7), null);
    Order order = new Order(no, "shop", customer, OrderState.OPEN, List.of(line));
    history.studio().orders.take(history.act(), order);
    Long id = history.studio().look(books -> books.orders().lineIds(no)).get(line.key());
    making.shelf(design).remove(piece);
    move(List.of(piece), PieceStep.PICKED, id);
    move(List.of(piece), PieceStep.SOLD, id);
    history.studio().orders.move(history.act(), no, OrderState.SENT);
  }

  private void putBack(OrderLine line, List<Long> pieces) {
    for (int i = pieces.size() - 1; i >= 0; i--) {
      making.shelf(line.design()).addFirst(pieces.get(i));
    }
  }

  private boolean move(List<Long> pieces, PieceStep step, @Nullable Long line) {
    return history
        .studio()
        .advancePieces
        .run(history.act(), new AdvancePieces.Request(pieces, step, null, line))
        .isDone();
  }
}

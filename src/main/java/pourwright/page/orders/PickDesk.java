package pourwright.page.orders;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pourwright.batch.Grade;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.Books;
import pourwright.work.Drawers;
import pourwright.work.Outcome;

/** Picking for an order: rested candles by their marks, the oldest first; then it is sent. */
public final class PickDesk {
  private static final String TEMPLATE = "orders/pick.jte";
  private static final int SHOWN_MOST = 60;

  private final Desk desk;

  PickDesk(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param form what was typed
   * @param number of the order
   * @param path of the page
   * @param state where the order is on its way
   * @param lines what is wanted
   * @param open whether anything can still be picked or sent
   * @param picked how many stand picked
   */
  public record PickPage(
      Form form,
      String number,
      String path,
      String state,
      List<Line> lines,
      boolean open,
      int picked) {}

  /**
   * A line of the order.
   *
   * @param field of its ticks
   * @param candle its name
   * @param wanted how many
   * @param picked how many stand picked or have left
   * @param shelf rested candles to choose from
   */
  public record Line(String field, String candle, int wanted, int picked, List<Tick> shelf) {}

  /** A candle to tick: its number, its mark, and whether it is ticked beforehand. */
  public record Tick(String id, String mark, boolean ticked) {}

  void addTo(RoutesConfig routes) {
    routes.get("/orders/pick/{number}", http -> show(http, Form.blank()));
    routes.post("/orders/pick/{number}", this::pick);
    routes.post("/orders/pick/{number}/sent", this::sent);
  }

  private void show(Context http, Form form) {
    Show.page(http, TEMPLATE, desk.studio().look(b -> page(b, order(b, http), form)));
  }

  private static Order order(Books books, Context http) {
    return books
        .orders()
        .order(http.pathParam("number"))
        .orElseThrow(() -> new TurnedAway(404, "There is no such order", "Look in the book."));
  }

  static String path(String number) {
    return "/orders/pick/" + URLEncoder.encode(number, StandardCharsets.UTF_8).replace("+", "%20");
  }

  private static String field(long line) {
    return "line-" + line;
  }

  private static PickPage page(Books books, Order order, Form form) {
    Map<OrderLine.Key, Long> ids = books.orders().lineIds(order.number());
    Map<Long, Integer> filled = books.orders().filled(ids.values());
    List<Line> lines = new ArrayList<>();
    for (OrderLine line : order.lines()) {
      long id = ids.getOrDefault(line.key(), 0L);
      int picked = filled.getOrDefault(id, 0);
      List<Piece> shelf = shelf(books, line.design());
      List<Tick> ticks = new ArrayList<>();
      for (Piece piece : shelf) {
        boolean first = ticks.size() < line.quantity() - picked;
        ticks.add(new Tick(String.valueOf(piece.id()), piece.mark().text(), first));
      }
      String name =
          books
              .cards()
              .current(Drawers.CANDLE, line.design())
              .map(c -> c.body().name())
              .orElse(line.design());
      lines.add(new Line(field(id), name, line.quantity(), picked, ticks));
    }
    return new PickPage(
        form,
        order.number(),
        path(order.number()),
        order.state().words(),
        lines,
        order.state().wantsPieces(),
        books.recalls().pickedFor(order.number()).size());
  }

  /** Rested candles of a design that are sold as new and not held, the oldest first. */
  private static List<Piece> shelf(Books books, String design) {
    Set<Long> held = books.holds().stopped();
    List<Long> rested = books.recalls().standing(design, "Rested", SHOWN_MOST);
    return books.pieces().pieces(rested).values().stream()
        .filter(p -> p.grade() == null || p.grade() == Grade.FIRST)
        .filter(p -> !held.contains(p.id()))
        .toList();
  }

  private void pick(Context http) {
    Form form = Form.of(http);
    Order order = desk.studio().look(b -> order(b, http));
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.who(http, form);
      return;
    }
    int picked = 0;
    int nth = 0;
    for (long line : desk.studio().look(b -> b.orders().lineIds(order.number())).values()) {
      List<Long> pieces =
          form.values(field(line)).stream()
              .filter(p -> p.matches("\\d{1,18}"))
              .map(Long::valueOf)
              .toList();
      if (pieces.isEmpty()) {
        continue;
      }
      String key = act.get().requestKey() + (nth == 0 ? "" : "-" + nth);
      nth++;
      Outcome<List<Piece>> outcome =
          desk.studio()
              .advancePieces
              .run(
                  new Act(act.get().by(), key, order.number()),
                  new AdvancePieces.Request(pieces, PieceStep.PICKED, null, line));
      if (outcome instanceof Outcome.Refused<List<Piece>> refused) {
        Show.done(http, Said.refused(refused), path(order.number()));
        return;
      }
      picked += pieces.size();
    }
    Show.done(
        http,
        picked == 0
            ? Said.refused("Nothing was ticked.", "Tick the marks that go into the box.")
            : Said.done("Picked: " + picked + "."),
        path(order.number()));
  }

  /** What stands picked has left, and the order with it. */
  private void sent(Context http) {
    Form form = Form.of(http);
    Order order = desk.studio().look(b -> order(b, http));
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.who(http, form);
      return;
    }
    List<Long> picked = desk.studio().look(b -> b.recalls().pickedFor(order.number()));
    Outcome<List<Piece>> left =
        desk.studio()
            .advancePieces
            .run(act.get(), AdvancePieces.Request.of(picked, PieceStep.SOLD));
    if (left instanceof Outcome.Refused<List<Piece>> refused) {
      Show.done(http, Said.refused(refused), path(order.number()));
      return;
    }
    Act on = new Act(act.get().by(), act.get().requestKey() + "-sent", "");
    Outcome<Order> moved = desk.studio().orders.move(on, order.number(), OrderState.SENT);
    Show.done(
        http,
        moved instanceof Outcome.Refused<Order> refused
            ? Said.refused(refused)
            : Said.done("Order " + order.number() + " has left: " + picked.size() + "."),
        path(order.number()));
  }
}

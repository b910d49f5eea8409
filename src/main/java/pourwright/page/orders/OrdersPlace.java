package pourwright.page.orders;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.order.Order;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Place;
import pourwright.page.Show;
import pourwright.quantity.OutOfRange;
import pourwright.work.Drawers;
import pourwright.work.PageOf;

/** Orders and stall stock to make, and the earliest honest date for each. */
public final class OrdersPlace implements Place {
  private static final int ORDERS_AT_ONCE = 50;

  private final Desk desk;
  private final ImportDesk imports;

  /** The place, with the books, clock and zone of the studio. */
  public OrdersPlace(Desk desk) {
    this.desk = desk;
    this.imports = new ImportDesk(desk);
  }

  @Override
  public String name() {
    return "Order book";
  }

  @Override
  public String path() {
    return "/orders";
  }

  @Override
  public String purpose() {
    return "Orders and stall stock to make, and the earliest honest date for each.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), http -> show(http, Form.startingFrom(Map.of("count", "1")), List.of()));
    routes.get("/orders/promise", this::promise);
    imports.addTo(routes);
  }

  private void show(Context http, Form form, List<String> promise) {
    String after = http.queryParam("after");
    Map<String, String> candles = new LinkedHashMap<>();
    PageOf<Order> orders =
        desk.studio()
            .look(
                books -> {
                  books
                      .cards()
                      .all(Drawers.CANDLE)
                      .forEach(c -> candles.put(c.code(), c.body().name()));
                  return books.orders().list(null, after, ORDERS_AT_ONCE);
                });
    OrdersPage page =
        new OrdersPage(
            purpose(),
            orders.items().stream().map(o -> OrdersPage.Row.of(o, desk.today())).toList(),
            orders.next() == null ? "" : orders.next(),
            form,
            candles,
            promise);
    if (form.ok()) {
      Show.page(http, "orders/orders.jte", page);
    } else {
      Show.again(http, "orders/orders.jte", page);
    }
  }

  /** The earliest day by the forward rule, with all open orders before it. */
  private void promise(Context http) {
    String asked = Optional.ofNullable(http.queryParam("candle")).orElse("");
    String wish = Optional.ofNullable(http.queryParam("count")).orElse("");
    Form form = Form.startingFrom(Map.of("candle", asked, "count", wish));
    Optional<Integer> count = form.count("count", "how many", 1, 500);
    Optional<String> candle = form.read("candle", "which candle", c -> c);
    if (!form.ok() || count.isEmpty() || candle.isEmpty()) {
      show(http, form, List.of());
      return;
    }
    List<String> said = new ArrayList<>();
    try {
      said.addAll(Promises.of(desk, candle.get(), count.get()));
    } catch (OutOfRange e) {
      form.complain("candle", e.sentence() + ": " + e.hint());
    }
    show(http, form, said);
  }
}

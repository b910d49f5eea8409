package pourwright.page.orders;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import pourwright.order.Order;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Place;
import pourwright.page.Show;
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
    routes.get(path(), this::show);
    imports.addTo(routes);
    new OrderDesk(desk).addTo(routes);
    new PickDesk(desk).addTo(routes);
    new CustomerDesk(desk).addTo(routes);
  }

  private void show(Context http) {
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
            Form.startingFrom(Map.of("count", "1")),
            candles);
    Show.page(http, "orders/orders.jte", page);
  }
}

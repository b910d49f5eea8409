package pourwright.page.orders;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pourwright.page.Desk;
import pourwright.page.Place;
import pourwright.page.Show;

/** Orders and stall stock to make, and the earliest honest date for each. */
public final class OrdersPlace implements Place {
  private final Desk desk;

  /** The place, with the clock and zone of the studio. */
  public OrdersPlace(Desk desk) {
    this.desk = desk;
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
  }

  private void show(Context http) {
    Show.page(http, "orders/orders.jte", OrdersPage.of(purpose(), desk));
  }
}

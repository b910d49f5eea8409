package pourwright.page.stockroom;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pourwright.page.Desk;
import pourwright.page.Place;
import pourwright.page.Show;

/** Materials, lots, counts, buying and tracing. */
public final class StockroomPlace implements Place {
  private final Desk desk;

  /** The place, with the clock and zone of the studio. */
  public StockroomPlace(Desk desk) {
    this.desk = desk;
  }

  @Override
  public String name() {
    return "Stockroom";
  }

  @Override
  public String path() {
    return "/stockroom";
  }

  @Override
  public String purpose() {
    return "Materials, lots, counts, buying and tracing.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), this::show);
  }

  private void show(Context http) {
    Show.page(http, "stockroom/stockroom.jte", StockroomPage.of(purpose(), desk));
  }
}

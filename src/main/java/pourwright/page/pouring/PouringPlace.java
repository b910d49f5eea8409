package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pourwright.page.Desk;
import pourwright.page.Place;
import pourwright.page.Show;

/** Wicks, melt, scent, the cooling clock, pour, tops, trim, rest. */
public final class PouringPlace implements Place {
  private final Desk desk;

  /** The place, with the clock and zone of the studio. */
  public PouringPlace(Desk desk) {
    this.desk = desk;
  }

  @Override
  public String name() {
    return "Pouring bench";
  }

  @Override
  public String path() {
    return "/pouring";
  }

  @Override
  public String purpose() {
    return "Wicks, melt, scent, the cooling clock, pour, tops, trim, rest.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), this::show);
  }

  private void show(Context http) {
    Show.page(http, "pouring/pouring.jte", PouringPage.of(purpose(), desk));
  }
}

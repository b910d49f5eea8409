package pourwright.page.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pourwright.page.Desk;
import pourwright.page.Place;
import pourwright.page.Show;

/** Hazard labels, content labels, batch marks and sheets to print. */
public final class PressPlace implements Place {
  private final Desk desk;

  /** The place, with the clock and zone of the studio. */
  public PressPlace(Desk desk) {
    this.desk = desk;
  }

  @Override
  public String name() {
    return "Label press";
  }

  @Override
  public String path() {
    return "/press";
  }

  @Override
  public String purpose() {
    return "Hazard labels, content labels, batch marks and sheets to print.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), this::show);
  }

  private void show(Context http) {
    Show.page(http, "press/press.jte", PressPage.of(purpose(), desk));
  }
}

package pourwright.page.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pourwright.page.Desk;
import pourwright.page.Place;
import pourwright.page.Show;

/** Burn tests, verdicts, and what to test next. */
public final class ShelfPlace implements Place {
  private final Desk desk;

  /** The place, with the clock and zone of the studio. */
  public ShelfPlace(Desk desk) {
    this.desk = desk;
  }

  @Override
  public String name() {
    return "Test shelf";
  }

  @Override
  public String path() {
    return "/shelf";
  }

  @Override
  public String purpose() {
    return "Burn tests, verdicts, and what to test next.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), this::show);
  }

  private void show(Context http) {
    Show.page(http, "shelf/shelf.jte", ShelfPage.of(purpose(), desk));
  }
}

package pourwright.page.slate;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pourwright.page.Desk;
import pourwright.page.Place;
import pourwright.page.Show;

/** What a piece truly costs, its price and what it leaves. */
public final class SlatePlace implements Place {
  private final Desk desk;

  /** The place, with the clock and zone of the studio. */
  public SlatePlace(Desk desk) {
    this.desk = desk;
  }

  @Override
  public String name() {
    return "Slate";
  }

  @Override
  public String path() {
    return "/slate";
  }

  @Override
  public String purpose() {
    return "What a piece truly costs, its price and what it leaves.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), this::show);
  }

  private void show(Context http) {
    Show.page(http, "slate/slate.jte", SlatePage.of(purpose(), desk));
  }
}

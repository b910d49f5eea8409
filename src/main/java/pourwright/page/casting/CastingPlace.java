package pourwright.page.casting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pourwright.page.Desk;
import pourwright.page.Place;
import pourwright.page.Show;

/** Mix, cast, set, demold, sand, seal, prove tight. */
public final class CastingPlace implements Place {
  private final Desk desk;

  /** The place, with the clock and zone of the studio. */
  public CastingPlace(Desk desk) {
    this.desk = desk;
  }

  @Override
  public String name() {
    return "Casting bench";
  }

  @Override
  public String path() {
    return "/casting";
  }

  @Override
  public String purpose() {
    return "Mix, cast, set, demold, sand, seal, prove tight.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), this::show);
  }

  private void show(Context http) {
    Show.page(http, "casting/casting.jte", CastingPage.of(purpose(), desk));
  }
}

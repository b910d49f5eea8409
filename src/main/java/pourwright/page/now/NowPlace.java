package pourwright.page.now;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pourwright.page.Desk;
import pourwright.page.Place;
import pourwright.page.Show;

/** What to do now and next, what runs, what is late and what is short. */
public final class NowPlace implements Place {
  private final Desk desk;
  private final WorkAhead ahead;

  /** The place, with the clock and zone of the studio, and the plan that is told there. */
  public NowPlace(Desk desk, WorkAhead ahead) {
    this.desk = desk;
    this.ahead = ahead;
  }

  @Override
  public String name() {
    return "Now";
  }

  @Override
  public String path() {
    return "/";
  }

  @Override
  public String purpose() {
    return "What to do now and next, what runs, what is late and what is short.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), this::show);
  }

  private void show(Context http) {
    NowPage page = NowPage.of(purpose(), desk, ahead.get());
    if (page.waiting()) {
      http.header("Refresh", "2");
    }
    Show.page(http, "now/now.jte", page);
  }
}

package pourwright.page.board;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pourwright.page.Desk;
import pourwright.page.Place;
import pourwright.page.Show;

/** Molds, vessels and candles, drawn to scale. */
public final class BoardPlace implements Place {
  private final Desk desk;

  /** The place, with the clock and zone of the studio. */
  public BoardPlace(Desk desk) {
    this.desk = desk;
  }

  @Override
  public String name() {
    return "Drawing board";
  }

  @Override
  public String path() {
    return "/board";
  }

  @Override
  public String purpose() {
    return "Molds, vessels and candles, drawn to scale.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), this::show);
  }

  private void show(Context http) {
    Show.page(http, "board/board.jte", BoardPage.of(purpose(), desk));
  }
}

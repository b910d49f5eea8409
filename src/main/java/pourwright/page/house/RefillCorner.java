package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import pourwright.batch.Piece;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.Counted;
import pourwright.work.Act;
import pourwright.work.Outcome;
import pourwright.work.RefillVessel;

/** Clears a vessel that came back for another filling, under a new mark. */
public final class RefillCorner implements Corner {
  private final Desk desk;

  /** Refills of this studio. */
  public RefillCorner(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param mark of the piece that came back
   * @param path where the form goes
   * @param fills how often it was filled again, in words
   */
  public record RefillPage(Form form, String mark, String path, String fills) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(
        "/refill/{id}", http -> Show.page(http, "house/refill.jte", page(http, Form.blank())));
    routes.post("/refill/{id}", this::clear);
  }

  private RefillPage page(Context http, Form form) {
    long id = Numbers.of(http.pathParam("id"));
    return desk.studio()
        .look(
            books ->
                books
                    .pieces()
                    .piece(id)
                    .map(
                        piece ->
                            new RefillPage(
                                form,
                                piece.mark().text(),
                                "/refill/" + id,
                                "Filled again "
                                    + Counted.of(RefillVessel.fills(books, piece), "time", "times")
                                    + " of "
                                    + RefillVessel.limit(books)
                                    + " (house).")))
        .orElseThrow(
            () -> new TurnedAway(404, "There is no such piece", "Look for it by its mark."));
  }

  private void clear(Context http) {
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, form.optionalText("note"));
    if (act.isEmpty()) {
      Show.again(http, "house/refill.jte", page(http, form));
      return;
    }
    Outcome<Piece> outcome =
        desk.studio()
            .refillVessel
            .run(
                act.get(),
                new RefillVessel.Request(
                    Numbers.of(http.pathParam("id")),
                    form.ticked("inspected"),
                    form.ticked("cleared"),
                    form.ticked("dried"),
                    form.ticked("checked")));
    if (outcome instanceof Outcome.Refused<Piece> refused) {
      form.complain("inspected", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, "house/refill.jte", page(http, form));
      return;
    }
    Show.done(
        http,
        Said.done("Its new mark is " + outcome.made().mark().text() + ". Prove it tight again."),
        "/piece/" + outcome.made().id());
  }
}

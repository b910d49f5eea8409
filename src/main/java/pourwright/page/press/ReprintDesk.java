package pourwright.page.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.hazard.HazardSheet;
import pourwright.material.Material;
import pourwright.page.Desk;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.Counted;
import pourwright.work.Books;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.SheetChange;

/** After a sheet was written down anew: which labels must be printed again. */
final class ReprintDesk {
  private final Desk desk;

  ReprintDesk(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/press/reprint/{material}", this::show);
  }

  private void show(Context http) {
    Show.page(
        http,
        "press/reprint.jte",
        desk.studio().look(books -> page(books, http.pathParam("material"))));
  }

  private static PressPages.ReprintPage page(Books books, String code) {
    Material material =
        Drawers.materials(books)
            .find(code)
            .orElseThrow(
                () ->
                    new TurnedAway(
                        404, "There is no such material", "Look it up in the stockroom."));
    List<CardVersion<HazardSheet>> sheets = books.cards().history(Drawers.SHEET, code);
    Optional<SheetChange.Changed> changed =
        sheets.isEmpty()
            ? Optional.empty()
            : new SheetChange(books).of(code, sheets.get(0).version());
    String compared =
        changed.isEmpty()
            ? "There is no older sheet to compare with: nothing has to be printed again."
            : "Sheet "
                + sheets.get(0).body().revision()
                + " against "
                + books
                    .cards()
                    .version(Drawers.SHEET, code, sheets.get(0).version() - 1)
                    .map(v -> v.body().revision())
                    .orElse("the one before")
                + "; looked at "
                + Counted.of(changed.get().looked(), "candle.", "candles.");
    List<PressPages.Again> again = new ArrayList<>();
    changed.ifPresent(
        c ->
            c.labels()
                .forEach(
                    l ->
                        again.add(
                            new PressPages.Again(
                                l.code(),
                                l.name(),
                                words(l.before()),
                                words(l.now()),
                                l.shelf()))));
    return new PressPages.ReprintPage(code, material.name(), compared, changed.isPresent(), again);
  }

  private static String words(List<String> codes) {
    return codes.isEmpty() ? "nothing" : String.join(", ", codes);
  }
}

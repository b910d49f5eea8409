package pourwright.page.press;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import pourwright.label.LabelPress;
import pourwright.label.LabelRequest;
import pourwright.label.LabelText;
import pourwright.label.Maker;
import pourwright.label.Panel;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.OutOfRange;
import pourwright.work.Books;
import pourwright.work.CandleLabel;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.IssuedFolder;
import pourwright.work.LabelReader;

/**
 * A candle's label as it was asked for, read from the books in one look.
 *
 * @param form what was typed
 * @param layout how it is set
 * @param label what it stands on
 * @param request what it is made from
 * @param text what stands on it
 */
record LabelShown(
    Form form, LabelLayout layout, CandleLabel label, LabelRequest request, LabelText text) {

  /** What the last proof folder of a candle was set like. */
  static Optional<IssuedFolder.Label> last(Books books, String candle) {
    return books
        .cards()
        .current(Drawers.FOLDER, candle)
        .map(CardVersion::body)
        .map(IssuedFolder::label);
  }

  /** The label of the candle in the address, as the address asks for it. */
  static LabelShown asked(Desk desk, Context http) {
    String code = http.pathParam("code");
    return desk.studio()
        .look(books -> read(books, http, LabelLayout.asked(http, last(books, code))));
  }

  /** The label of the candle in the address, as a form asks for it. */
  static LabelShown read(Books books, Context http, Form form) {
    LabelLayout layout = LabelLayout.of(form);
    CandleLabel label;
    try {
      label =
          new LabelReader(books)
              .candle(http.pathParam("code"), layout.mark())
              .orElseThrow(
                  () -> new TurnedAway(404, "There is no such candle", "Look it up on the board."));
    } catch (OutOfRange e) {
      throw new TurnedAway(409, e.sentence(), e.hint());
    }
    LabelRequest request =
        request(PressPlace.makerOf(books), label, layout, link(http, layout.markText()));
    return new LabelShown(form, layout, label, request, LabelPress.text(request, label.gate()));
  }

  private static LabelRequest request(
      Maker maker, CandleLabel label, LabelLayout layout, String link) {
    List<String> scents =
        label.candle().pour().fragrances().stream().map(f -> f.material().name()).toList();
    return new LabelRequest(
        label.candle().design().name(),
        String.join(", ", scents),
        label.classification(),
        label.candle().netG().low(),
        new Panel.OtherShape(label.candle().vessel().outsideM2() * 1e6),
        label.candle().vessel().holdsMl().value(),
        maker,
        layout.markText(),
        link,
        label.burn(),
        layout.languages(),
        layout.destination(),
        layout.ufi());
  }

  private static String link(Context http, String mark) {
    String base = http.scheme() + "://" + http.host();
    return mark.isEmpty() ? base : base + "/m/" + mark.replaceAll("[^A-Za-z0-9*]", "");
  }
}

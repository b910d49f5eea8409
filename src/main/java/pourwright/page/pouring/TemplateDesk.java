package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Locale;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.card.ResolvedCandle;
import pourwright.material.Property;
import pourwright.page.Desk;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.wick.WickTemplate;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.TemplatePrinter;
import pourwright.work.WickPlaces;

/** Prints the template that is laid in a vessel to stick the tabs. */
final class TemplateDesk {
  private static final double PLAY_MM = 1;
  private static final double TAB_MM = 20;

  private final Desk desk;
  private final TemplatePrinter printer;

  TemplateDesk(Desk desk, TemplatePrinter printer) {
    this.desk = desk;
    this.printer = printer;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/pouring/template/{candle}", this::print);
  }

  private void print(Context http) {
    String code = http.pathParam("candle");
    String paper = Locale.US.getCountry().equals(desk.locale().getCountry()) ? "letter" : "a4";
    CandleDesign design =
        desk.studio()
            .look(books -> books.cards().current(Drawers.CANDLE, code))
            .map(CardVersion::body)
            .orElseThrow(
                () -> new TurnedAway(404, "There is no such candle", "Look at the board."));
    CardBook cards = desk.studio().look(Drawers::book);
    try {
      byte[] pdf = printer.print(design.name(), template(cards, design), paper);
      Show.inline(http, pdf, "application/pdf", "template-" + code + ".pdf");
    } catch (OutOfRange e) {
      Show.done(http, Said.refused(e.sentence() + ".", e.hint() + "."), "/pouring");
    }
  }

  /** The places of the card, or the house's layout where the card leaves them open. */
  private static WickTemplate template(CardBook cards, CandleDesign design) {
    ResolvedCandle candle = design.resolve(cards);
    String tab = design.wicks().tab();
    double tabMm =
        tab == null
            ? TAB_MM
            : cards
                .materials()
                .get(tab)
                .property(Property.DIAMETER_MM)
                .map(Sourced::value)
                .orElse(TAB_MM);
    return WickTemplate.of(
        candle.vessel().cavity().solid().bottom(), WickPlaces.of(candle).layout(), PLAY_MM, tabMm);
  }
}

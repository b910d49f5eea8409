package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.card.Vessel;
import pourwright.card.WickPlan;
import pourwright.page.Desk;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Outline;
import pourwright.shape.Point;
import pourwright.wick.WickLayout;
import pourwright.wick.WickLayout.Clearances;
import pourwright.wick.WickTemplate;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.TemplatePrinter;

/** Prints the template that is laid in a vessel to stick the tabs. */
final class TemplateDesk {
  private static final double WALL_MM = 15;
  private static final double SPACING_MM = 30;
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

  private static WickTemplate template(CardBook cards, CandleDesign design) {
    Vessel vessel = cards.vessel(design.vessel());
    Outline base = vessel.cavity().solid().bottom();
    return WickTemplate.of(base, layout(base, design.wicks()), PLAY_MM, TAB_MM);
  }

  /** The positions of the card, or the house's layout where the card leaves them open. */
  private static WickLayout layout(Outline base, WickPlan plan) {
    if (plan.positionsMm().isEmpty()) {
      return WickLayout.of(base, new Clearances(WALL_MM, SPACING_MM, true), plan.count());
    }
    List<Point> points =
        plan.positionsMm().stream().map(p -> new Point(p.get(0), p.get(1))).toList();
    return new WickLayout(points, 0, 0, 0);
  }
}

package pourwright.page.board;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.card.CandleDesign;
import pourwright.card.Vessel;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.page.board.VesselPage.Figure;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Hollow;
import pourwright.work.Drawers;

/** What stands beside a vessel: a lid that fits its rim, feet that it stands on. */
final class BesideRoutes {
  private static final String TEMPLATE = "board/beside.jte";

  /** Typical densities of stone and set wax, in g/ml. */
  private static final double STONE = 2.0;

  private static final double WAX = 0.88;

  /** House: a lid's gap all round, in mm. */
  private static final double GAP_LEAST = 0.5;

  private static final double GAP_MOST = 2.5;

  private final Desk desk;
  private final Lengths lengths;

  BesideRoutes(Desk desk) {
    this.desk = desk;
    this.lengths = new Lengths(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/board/vessel/{code}/beside", this::show);
  }

  private List<Vessel> vessels() {
    return desk.studio().look(b -> Drawers.book(b).all(Vessel.class));
  }

  private void show(Context http) {
    String code = http.pathParam("code");
    List<Vessel> all = vessels();
    Vessel vessel =
        all.stream()
            .filter(v -> v.code().equals(code))
            .findFirst()
            .orElseThrow(() -> new NotFoundResponse("no such vessel"));
    Map<String, String> asked = new LinkedHashMap<>();
    http.queryParamMap().forEach((name, values) -> asked.put(name, values.get(0)));
    Form form = Form.startingFrom(asked);
    List<Figure> figures = new ArrayList<>();
    addLid(form, vessel, all, figures);
    addFeet(form, vessel, figures);
    Map<String, String> lids = new LinkedHashMap<>();
    lids.put("", "none");
    all.stream().filter(v -> !v.code().equals(code)).forEach(v -> lids.put(v.code(), v.name()));
    BesidePage page =
        new BesidePage(vessel.name(), "/board/vessel/" + vessel.code(), form, lids, figures);
    if (form.ok()) {
      Show.page(http, TEMPLATE, page);
    } else {
      Show.again(http, TEMPLATE, page);
    }
  }

  /** The lid is drawn as a vessel: its foot is the plug that goes into the rim. */
  private void addLid(Form form, Vessel vessel, List<Vessel> all, List<Figure> figures) {
    String code = form.optionalText("lid");
    Optional<Vessel> lid = all.stream().filter(v -> v.code().equals(code)).findFirst();
    if (lid.isEmpty()) {
      return;
    }
    Hollow hollow = vessel.hollow();
    double gap = hollow.lidGapMm(lid.get().outer().solid().bottom());
    String said =
        gap < 0
            ? "it does not go in"
            : gap < GAP_LEAST
                ? "tight: it jams when it swells or is coated"
                : gap > GAP_MOST
                    ? "loose: it lets air in, no snuffer"
                    : "fits; may serve as snuffer";
    figures.add(
        new Figure(
            "Gap of the lid, least",
            lengths.number(gap, 1) + " mm",
            "",
            said + " (house: 0.5 to 2.5 mm); by the drawings"));
  }

  private void addFeet(Form form, Vessel vessel, List<Figure> figures) {
    if (form.optionalText("feet").isEmpty()) {
      return;
    }
    Optional<Integer> feet = form.count("feet", "how many feet", 3, 12);
    Optional<Double> out = lengths.read(form, "out", "how far out they stand");
    if (feet.isEmpty() || out.isEmpty()) {
      return;
    }
    Hollow hollow = vessel.hollow();
    double fill = Math.max(0, hollow.cavity().heightMm() - CandleDesign.HEADSPACE_MM);
    try {
      double lift = lengths.readIfThere(form, "lift", "how high they are").orElse(0.0);
      double edge = Hollow.feetMm(feet.get(), out.get());
      Hollow.Balance bare = hollow.balance(STONE, WAX, fill);
      double tips = Math.toDegrees(Math.atan2(edge, bare.centreMm() + lift));
      figures.add(
          new Figure(
              "Tips at, on feet",
              String.format(Locale.ROOT, "%.0f°", tips),
              String.format(Locale.ROOT, "%.0f° without", bare.tipsAtDegrees()),
              "filled, typical densities; over the line between two feet, "
                  + lengths.rough(edge)
                  + " mm from the axis"));
    } catch (OutOfRange e) {
      form.complain("out", e.sentence() + ": " + e.hint() + ".");
    }
  }
}

package pourwright.page.board;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.card.Vessel;
import pourwright.cast.Silicone;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.page.board.VesselPage.Figure;
import pourwright.quantity.OutOfRange;
import pourwright.work.Drawers;

/** Rubber for a mold: the box less the master, in two parts by mass. */
final class SiliconeRoutes {
  private static final String TEMPLATE = "board/silicone.jte";

  private final Desk desk;
  private final Lengths lengths;

  SiliconeRoutes(Desk desk) {
    this.desk = desk;
    this.lengths = new Lengths(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/board/silicone", this::show);
  }

  private void show(Context http) {
    Map<String, String> asked = new LinkedHashMap<>();
    asked.put("density", lengths.number(1.1));
    asked.put("b_to_a", lengths.number(0.1));
    asked.put("waste", lengths.number(5));
    asked.put("shrink", lengths.number(0.1));
    http.queryParamMap().forEach((name, values) -> asked.put(name, values.get(0)));
    Form form = Form.startingFrom(asked);
    List<Figure> figures = form.optionalText("box_length").isEmpty() ? List.of() : figures(form);
    SiliconePage page = new SiliconePage(form, vessels(), figures);
    if (form.ok()) {
      Show.page(http, TEMPLATE, page);
    } else {
      Show.again(http, TEMPLATE, page);
    }
  }

  private Map<String, String> vessels() {
    Map<String, String> vessels = new LinkedHashMap<>();
    vessels.put("", "none: volume below");
    desk.studio()
        .look(b -> Drawers.book(b).all(Vessel.class))
        .forEach(v -> vessels.put(v.code(), v.name()));
    return vessels;
  }

  private List<Figure> figures(Form form) {
    Optional<Double> length = lengths.read(form, "box_length", "the box's length");
    Optional<Double> width = lengths.read(form, "box_width", "the box's width");
    Optional<Double> height = lengths.read(form, "box_height", "the height to the pour line");
    Optional<Double> density = lengths.readNumber(form, "density", "the rubber's density");
    Optional<Double> ratio = lengths.readNumber(form, "b_to_a", "B to one of A");
    Optional<Double> waste = lengths.readNumber(form, "waste", "the waste");
    Optional<Double> shrink = lengths.readNumber(form, "shrink", "the shrinkage");
    Optional<Double> master = master(form);
    if (!form.ok() || length.isEmpty() || width.isEmpty() || height.isEmpty()) {
      return List.of();
    }
    double boxMl = length.get() * width.get() * height.get() / 1000;
    try {
      Silicone.Parts parts =
          Silicone.forBox(
              boxMl,
              master.orElse(0.0),
              density.orElse(1.1),
              ratio.orElse(0.1),
              waste.orElse(0.0) / 100);
      return written(parts, boxMl, master.orElse(0.0), shrink.orElse(0.0) / 100);
    } catch (OutOfRange e) {
      form.complain("box_height", e.sentence() + ": " + e.hint() + ".");
      return List.of();
    }
  }

  /**
   * The master as the block it takes up: the drawn vessel's mix, or a volume as it was measured.
   */
  private Optional<Double> master(Form form) {
    String code = form.optionalText("vessel");
    if (code.isEmpty()) {
      return lengths.readNumber(form, "master_ml", "the master's volume, or choose a vessel");
    }
    Optional<Vessel> vessel =
        desk.studio().look(b -> Drawers.book(b).all(Vessel.class)).stream()
            .filter(v -> v.code().equals(code))
            .findFirst();
    if (vessel.isEmpty()) {
      form.complain("vessel", "That vessel is not in the books.");
    }
    return vessel.map(v -> v.mixMl().value());
  }

  private List<Figure> written(Silicone.Parts parts, double boxMl, double masterMl, double shrink) {
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure("Part A", lengths.grams(parts.partAG(), 1), "", "the base, weighed"));
    figures.add(new Figure("Part B", lengths.grams(parts.partBG(), 0.1), "", "the hardener"));
    figures.add(
        new Figure(
            "Together",
            lengths.grams(parts.totalG(), 1),
            "",
            "box "
                + lengths.millilitres(boxMl)
                + " less master "
                + lengths.millilitres(masterMl)
                + ", with waste"));
    figures.add(
        new Figure(
            "A 100 mm master becomes",
            lengths.number(Silicone.shrunkMm(100, shrink), 2) + " mm",
            "",
            lengths.number(100 * Silicone.volumeShrink(shrink), 2)
                + " % less volume; the supplier's sheet says how far it shrinks"));
    return figures;
  }
}

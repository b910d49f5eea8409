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

  /** House: pieces a mold lasts where none is known. */
  private static final double LASTS = 50;

  /** Typical density of a fresh mix. */
  private static final double MIX_G_PER_ML = 2.0;

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
      List<Figure> figures = written(parts, boxMl, master.orElse(0.0), shrink.orElse(0.0) / 100);
      addCost(form, parts, figures);
      addBulge(form, Math.min(length.get(), width.get()) / 2, height.get(), figures);
      return form.ok() ? figures : List.of();
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

  private void addCost(Form form, Silicone.Parts parts, List<Figure> figures) {
    Optional<Double> price = lengths.readNumberIfThere(form, "price_kg", "the price of a kilogram");
    double more = lengths.readNumberIfThere(form, "more", "box, shell and hands").orElse(0.0);
    double lasts = lengths.readNumberIfThere(form, "lasts", "the casts it lasts").orElse(LASTS);
    if (price.isEmpty() || !form.ok()) {
      return;
    }
    try {
      double cost = Silicone.cost(parts.totalG(), price.get(), more);
      figures.add(
          new Figure(
              "One mold costs",
              lengths.number(cost, 2),
              "",
              "spread over "
                  + lengths.number(lasts, 0)
                  + " pieces: "
                  + lengths.number(Silicone.costOfPiece(cost, lasts), 2)
                  + " each; write it down beside the molds, and the slate counts it"));
    } catch (OutOfRange e) {
      form.complain("price_kg", e.sentence() + ": " + e.hint() + ".");
    }
  }

  /** How far the finished sleeve widens under a mix of typical density when nothing holds it. */
  private void addBulge(Form form, double half, double depth, List<Figure> figures) {
    Optional<Double> shore = lengths.readNumberIfThere(form, "shore", "the hardness, Shore A");
    Optional<Double> wall = lengths.readIfThere(form, "sleeve", "the rubber's wall");
    if (shore.isEmpty() || wall.isEmpty() || !form.ok()) {
      return;
    }
    try {
      double radius = Math.max(1, half - wall.get());
      double share = Silicone.bulge(MIX_G_PER_ML, depth, radius, wall.get(), shore.get());
      figures.add(
          new Figure(
              "Bulges at its foot by",
              lengths.number(100 * share, 1) + " %",
              "",
              "full of mix and without a shell; modulus after Gent, from memory"));
    } catch (OutOfRange e) {
      form.complain("shore", e.sentence() + ": " + e.hint() + ".");
    }
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

package pourwright.page.casting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.cast.Absorption;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.page.board.Lengths;
import pourwright.quantity.OutOfRange;

/**
 * What a hardened casting drinks: four weighings, or masses over time. Works out, keeps nothing.
 */
final class AbsorptionDesk {
  private static final String TEMPLATE = "casting/absorption.jte";
  private static final List<String> SOAK = List.of("dry_g", "soaked_g", "boiled_g", "hung_g");

  /** Hot wax: surface tension in N/m and viscosity in Pa·s, both from memory. */
  private static final double WAX_N_PER_M = 0.027;

  private static final double WAX_PA_S = 0.004;

  private final Lengths numbers;

  AbsorptionDesk(Desk desk) {
    this.numbers = new Lengths(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/casting/absorption", this::show);
  }

  private void show(Context http) {
    Map<String, String> asked = new LinkedHashMap<>();
    http.queryParamMap().forEach((name, values) -> asked.put(name, values.get(0)));
    Form form = Form.startingFrom(asked);
    List<AbsorptionPage.Figure> figures = new ArrayList<>();
    if (!form.optionalText("dry_g").isEmpty()) {
      soak(form, figures);
    }
    if (!form.optionalText("gains").isEmpty()) {
      rise(form, figures);
    }
    AbsorptionPage page = new AbsorptionPage(form, figures);
    if (form.ok()) {
      Show.page(http, TEMPLATE, page);
    } else {
      Show.again(http, TEMPLATE, page);
    }
  }

  private void soak(Form form, List<AbsorptionPage.Figure> figures) {
    List<Double> grams = new ArrayList<>();
    for (String field : SOAK) {
      numbers.readGrams(form, field, "this weight").ifPresent(grams::add);
    }
    if (!form.ok() || grams.size() < SOAK.size()) {
      return;
    }
    try {
      Absorption.Soaking s =
          Absorption.soaking(grams.get(0), grams.get(1), grams.get(2), grams.get(3));
      figures.add(figure("Drinks, soaked", percent(s.soaked()), "of its dry mass"));
      figures.add(figure("Drinks, boiled", percent(s.boiled()), "of its dry mass"));
      figures.add(figure("Open pores", percent(s.voids()), "of its volume"));
      figures.add(
          figure("Dry density", numbers.number(s.dryGPerMl(), 2) + " g/ml", "ASTM C642's form"));
    } catch (OutOfRange e) {
      form.complain("soaked_g", e.sentence() + ": " + e.hint() + ".");
    }
  }

  private void rise(Form form, List<AbsorptionPage.Figure> figures) {
    Optional<Double> face = numbers.readNumber(form, "face_cm2", "the wetted face");
    List<List<Double>> pairs = numbers.points(form, "gains");
    Optional<Double> wall = numbers.read(form, "wall_mm", "the wall");
    Optional<Double> pores = numbers.readNumber(form, "pores", "the open pores");
    if (!form.ok() || face.isEmpty() || wall.isEmpty() || pores.isEmpty()) {
      return;
    }
    try {
      Absorption.Sorptivity s =
          Absorption.sorptivity(
              pairs.stream().map(p -> new Absorption.Gain(60 * p.get(0), p.get(1))).toList(),
              100 * face.get());
      figures.add(
          figure(
              "Sorptivity",
              numbers.number(s.mmPerRootMin(), 2) + " mm/√min",
              "water, ASTM C1585's form; r "
                  + numbers.number(s.correlation(), 3)
                  + (s.correlation() < 0.98 ? ", below the 0.98 that the standard wants" : "")));
      double wax = s.mmPerRootS() * Absorption.liquidToWater(WAX_N_PER_M, WAX_PA_S);
      double hours = Absorption.secondsThrough(wall.get(), pores.get() / 100, wax) / 3600;
      figures.add(
          figure(
              "Hot wax through the bare wall",
              numbers.number(hours / 3, 1) + " to " + numbers.number(hours, 1) + " h",
              "scaled from water by tension and viscosity, which run one to three times too slow."
                  + " Only the wax test tells."));
    } catch (OutOfRange e) {
      form.complain("gains", e.sentence() + ": " + e.hint() + ".");
    }
  }

  private String percent(double share) {
    return numbers.number(100 * share, 1) + " %";
  }

  private static AbsorptionPage.Figure figure(String label, String value, String more) {
    return new AbsorptionPage.Figure(label, value, more);
  }
}

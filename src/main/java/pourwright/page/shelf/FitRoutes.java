package pourwright.page.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.burn.Burn;
import pourwright.burn.Calibration;
import pourwright.burn.TestFit;
import pourwright.burn.Vessel;
import pourwright.burn.Warmth;
import pourwright.burn.WickFit;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.work.Drawers;

/** Calibration: a candle's simulation fitted to its closed tests, and the model's score. */
final class FitRoutes {
  private static final String TEMPLATE = "shelf/fit.jte";

  private static final Map<String, String> NAMES =
      Map.of(
          "wick_root_w", "heat at the wick's root, W",
          "radiative_fraction", "share of the heat that radiates",
          "liquid_enhancement_horizontal", "stirring of the melt across, times");

  private final Desk desk;

  FitRoutes(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get(
        "/shelf/fit",
        http ->
            Show.page(
                http,
                TEMPLATE,
                page(
                    Form.startingFrom(
                        Map.of("wax", "plant", "conductivity", "1.0", "density", "1900")),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of())));
    routes.post("/shelf/fit", this::fit);
  }

  private FitPage page(
      Form form,
      List<String> lines,
      List<List<String>> estimates,
      List<List<String>> foretold,
      List<List<String>> running) {
    Map<String, String> candles = new LinkedHashMap<>();
    desk.studio()
        .look(books -> books.cards().all(Drawers.CANDLE))
        .forEach(c -> candles.put(c.code(), c.body().name()));
    return new FitPage(
        form, candles, SimulationForm.waxChoices(), lines, estimates, foretold, running);
  }

  private void fit(Context http) {
    Form form = Form.of(http);
    String code = form.text("candle", "a candle");
    Optional<String> wax =
        form.choice("wax", "a wax", List.copyOf(SimulationForm.waxChoices().keySet()));
    Optional<Double> k = form.read("conductivity", "a number", t -> number(t, .05, 5));
    Optional<Double> rho = form.read("density", "a number", t -> number(t, 500, 4000));
    Optional<Vessel> vessel = Optional.empty();
    if (form.ok() && k.isPresent() && rho.isPresent()) {
      double conductivity = k.get();
      double density = rho.get();
      vessel = desk.studio().look(books -> TestedCandle.vessel(books, code, conductivity, density));
      if (vessel.isEmpty()) {
        form.complain("candle", "Its card or its vessel's card is not on file.");
      }
    }
    if (!form.ok() || vessel.isEmpty() || wax.isEmpty()) {
      Show.again(http, TEMPLATE, page(form, List.of(), List.of(), List.of(), List.of()));
      return;
    }
    TestedCandle read = desk.studio().look(books -> TestedCandle.of(books, code));
    try {
      Burn burn = read.burn(vessel.get(), wax.get());
      TestFit.Laid laid = TestFit.lay(burn, read.each());
      TestFit fit = laid.latest();
      Optional<Warmth> warmth = Warmth.of(laid, read.cycle(vessel.get(), wax.get()));
      Show.page(
          http,
          TEMPLATE,
          page(
              form,
              lines(read, fit, warmth),
              estimates(fit),
              foretold(fit, read.seenTests() >= Warmth.TESTS_MIN),
              running(laid, read)));
    } catch (OutOfRange e) {
      form.complain("candle", e.sentence() + ": " + e.hint() + ".");
      Show.again(http, TEMPLATE, page(form, List.of(), List.of(), List.of(), List.of()));
    }
  }

  private static Double number(String text, double least, double most) {
    double value = Double.parseDouble(text.replace(',', '.'));
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException("from " + least + " to " + most);
    }
    return value;
  }

  private static List<String> lines(TestedCandle read, TestFit fit, Optional<Warmth> warmth) {
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "Stands on %s, %s, and a weighed burn rate of %.2f g/h.",
            Counted.of(read.tests(), "closed test", "closed tests"),
            Counted.of(read.seenReadings(), "reading", "readings"),
            read.rate()));
    int free = read.seenReadings() - fit.fitted().estimates().size();
    lines.add(
        String.format(
            Locale.ROOT,
            "Misfit %.1f where about %d is expected%s.",
            fit.fitted().misfit(),
            free,
            fit.fitted().misfit() > 2.0 * Math.max(1, free)
                ? ": the model does not follow these readings"
                : ""));
    lines.add(
        warmth
            .map(FitRoutes::warmest)
            .orElse(
                "Fewer than three tests have read the wall: no temperature is told, only more or"
                    + " less."));
    score(lines, fit, WickFit.Kind.POOL_RADIUS_MM, "mm of the pool's half width");
    score(lines, fit, WickFit.Kind.POOL_DEPTH_MM, "mm of its depth");
    score(lines, fit, WickFit.Kind.WALL_C, "K of the wall");
    score(lines, fit, WickFit.Kind.BASE_C, "K of the underside");
    if (fit.foretold().isEmpty()) {
      lines.add("No later test yet to hold it against.");
    }
    return lines;
  }

  /** Wall and underside of the candle in a usual cycle, as figures with their bands. */
  private static String warmest(Warmth warmth) {
    return String.format(
        Locale.ROOT,
        "In a cycle of 4 h in a room of 21 °C, at the warmest: %s; from %s that read the"
            + " wall. A prediction, no limit and no verdict.",
        Beside.degrees(warmth),
        Counted.of(warmth.tests(), "test", "tests"));
  }

  /** Each test foretold from those before it, and all of them together. */
  private static List<List<String>> running(TestFit.Laid laid, TestedCandle read) {
    if (read.tests() < 2) {
      return List.of();
    }
    List<List<String>> rows = new ArrayList<>();
    List<TestFit.Foretold> all = new ArrayList<>();
    List<List<TestFit.Foretold>> each = laid.running();
    for (int i = 0; i < each.size(); i++) {
      if (!each.get(i).isEmpty()) {
        all.addAll(each.get(i));
        rows.add(scores("Test " + read.ids().get(i), each.get(i)));
      }
    }
    if (rows.size() > 1) {
      rows.add(scores("all so far", all));
    }
    return rows;
  }

  private static List<String> scores(String name, List<TestFit.Foretold> of) {
    List<String> row = new ArrayList<>(List.of(name));
    for (WickFit.Kind kind :
        List.of(
            WickFit.Kind.POOL_RADIUS_MM,
            WickFit.Kind.POOL_DEPTH_MM,
            WickFit.Kind.WALL_C,
            WickFit.Kind.BASE_C)) {
      double score = TestFit.score(of, kind);
      row.add(Double.isNaN(score) ? "not read" : String.format(Locale.ROOT, "%.1f", score));
    }
    return row;
  }

  private static void score(List<String> lines, TestFit fit, WickFit.Kind kind, String unit) {
    double score = fit.score(kind);
    if (!Double.isNaN(score)) {
      lines.add(
          String.format(Locale.ROOT, "The latest test was foretold to %.1f %s.", score, unit));
    }
  }

  private static List<List<String>> estimates(TestFit fit) {
    List<List<String>> rows = new ArrayList<>();
    for (Calibration.Estimate e : fit.fitted().estimates()) {
      rows.add(
          List.of(
              NAMES.getOrDefault(e.name(), e.name()),
              Plot.plain(e.value()),
              Plot.plain(e.low()) + " to " + Plot.plain(e.high()),
              e.cannotBeToldApart()
                  ? "cannot be told apart by these readings"
                  : e.openBelow() || e.openAbove() ? "open to one side" : "told"));
    }
    return rows;
  }

  private static List<List<String>> foretold(TestFit fit, boolean calibrated) {
    List<List<String>> rows = new ArrayList<>();
    for (TestFit.Foretold f : fit.foretold()) {
      WickFit.Want want = f.got().want();
      boolean hidden =
          !calibrated && (want.kind() == WickFit.Kind.WALL_C || want.kind() == WickFit.Kind.BASE_C);
      String words =
          switch (want.kind()) {
            case POOL_RADIUS_MM -> "half the pool's width, mm";
            case POOL_DEPTH_MM -> "pool depth, mm";
            case WALL_C -> "outer wall, °C";
            case BASE_C -> "underside, °C";
          };
      double off = f.said() - f.got().value();
      rows.add(
          List.of(
              words + ", after " + Plot.plain(want.hours()) + " h",
              Plot.plain(f.got().value()),
              hidden ? (off > 0 ? "more" : "less") : Plot.plain(f.said()),
              hidden ? "–" : String.format(Locale.ROOT, "%+.1f", off)));
    }
    return rows;
  }
}

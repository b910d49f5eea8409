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
import pourwright.burn.BurnRate;
import pourwright.burn.Calibration;
import pourwright.burn.Reading;
import pourwright.burn.TestFit;
import pourwright.burn.Vessel;
import pourwright.burn.WickFit;
import pourwright.card.CandleDesign;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Circle;
import pourwright.work.Books;
import pourwright.work.BurnTest;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;

/** Calibration: a candle's simulation fitted to its closed tests, and the model's score. */
final class FitRoutes {
  private static final String TEMPLATE = "shelf/fit.jte";
  private static final int TESTS_MIN = 3;
  private static final int TESTS = 30;
  private static final double EMISSIVITY = .92;
  private static final double HEAT_CAPACITY = 950;

  private static final Map<String, String> NAMES =
      Map.of(
          "wick_root_w", "heat at the wick's root, W",
          "radiative_fraction", "share of the heat that radiates",
          "liquid_enhancement_horizontal", "stirring of the melt across, times");

  private final Desk desk;

  FitRoutes(Desk desk) {
    this.desk = desk;
  }

  /** What the closed tests of a candle read in the first cycle of each sample. */
  private record Read(List<Long> ids, List<List<TestFit.Got>> each, double rate) {
    int tests() {
      return ids.size();
    }

    /** All but the latest, where there is more than one. */
    List<TestFit.Got> seen() {
      return each.subList(0, each.size() < 2 ? each.size() : each.size() - 1).stream()
          .flatMap(List::stream)
          .toList();
    }

    List<TestFit.Got> later() {
      return each.size() < 2 ? List.of() : each.get(each.size() - 1);
    }
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
      vessel = desk.studio().look(books -> vessel(books, code, conductivity, density));
      if (vessel.isEmpty()) {
        form.complain("candle", "Its card or its vessel's card is not on file.");
      }
    }
    if (!form.ok() || vessel.isEmpty() || wax.isEmpty()) {
      Show.again(http, TEMPLATE, page(form, List.of(), List.of(), List.of(), List.of()));
      return;
    }
    Read read = desk.studio().look(books -> read(books, code));
    try {
      Burn burn =
          SimulationForm.candle(vessel.get(), wax.get(), read.rate, new double[] {21, hours(read)});
      TestFit fit = TestFit.of(burn, read.seen(), read.later());
      Show.page(
          http,
          TEMPLATE,
          page(
              form,
              lines(read, fit),
              estimates(fit),
              foretold(fit, read.tests() >= TESTS_MIN),
              running(burn, read)));
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

  private static double hours(Read read) {
    double most = 0.5;
    for (TestFit.Got got : read.seen()) {
      most = Math.max(most, got.want().hours());
    }
    for (TestFit.Got got : read.later()) {
      most = Math.max(most, got.want().hours());
    }
    return Math.min(12, most);
  }

  /** The vessel of a candle as a simulation takes it: even wall and base from its drawing. */
  static Optional<Vessel> vessel(Books books, String code, double k, double density) {
    Optional<CandleDesign> candle =
        books.cards().current(Drawers.CANDLE, code).map(CardVersion::body);
    return candle
        .flatMap(c -> books.cards().current(Drawers.VESSEL, c.vessel()))
        .map(CardVersion::body)
        .map(
            v ->
                new Vessel(
                    v.cavity().solid(),
                    v.cavity().heightMm() - candle.get().headspaceMm(),
                    (v.outer().solid().bottom().lengthMm() - v.cavity().solid().bottom().lengthMm())
                        / 2,
                    v.outer().heightMm() - v.cavity().heightMm(),
                    new Vessel.Stuff(k, density, HEAT_CAPACITY, EMISSIVITY)));
  }

  private static Read read(Books books, String candle) {
    List<Long> ids = new ArrayList<>();
    List<List<TestFit.Got>> each = new ArrayList<>();
    List<Double> rates = new ArrayList<>();
    for (BurnTest test : books.burns().list(candle, null, TESTS).items()) {
      if (test.closed() == null) {
        continue;
      }
      List<TestFit.Got> got = new ArrayList<>();
      for (TestReader.Sample sample : TestReader.samples(books, test.id())) {
        for (TestReader.Burnt burnt : sample.cycles()) {
          if (!burnt.early() && !burnt.kind().isMisuse()) {
            BurnRate.of(burnt.judged(), BurnRate.USUAL_RESOLUTION_G)
                .ifPresent(r -> rates.add(r.gramsPerHour()));
            if (burnt.cycle().number() == 1) {
              burnt.judged().readings().forEach(r -> add(got, r));
            }
          }
        }
      }
      ids.add(0, test.id()); // listed newest first
      each.add(0, got);
    }
    return new Read(ids, each, rates.stream().mapToDouble(r -> r).average().orElse(0));
  }

  /**
   * A tested candle to hold a simulation against; empty where no closed test weighed it or it is
   * not a round one with one wick.
   *
   * @param set conductivity W/(m·K), density kg/m³, room °C, hours
   */
  static Optional<Beside> tested(Books books, String code, String wax, double[] set) {
    Optional<CandleDesign> design =
        books.cards().current(Drawers.CANDLE, code).map(CardVersion::body);
    try {
      Optional<Vessel> vessel = vessel(books, code, set[0], set[1]);
      double rate = read(books, code).rate;
      boolean fits =
          design.isPresent()
              && design.get().wicks().count() == 1
              && vessel.isPresent()
              && vessel.get().cavity().bottom() instanceof Circle
              && rate > 0;
      return fits
          ? Optional.of(
              new Beside(
                  design.get().name(),
                  SimulationForm.candle(vessel.get(), wax, rate, new double[] {set[2], set[3]})))
          : Optional.empty();
    } catch (OutOfRange e) {
      return Optional.empty(); // a card or what was weighed cannot be
    }
  }

  private static void add(List<TestFit.Got> got, Reading reading) {
    double hours = reading.minute() / 60;
    if (hours < 0.25) {
      return; // the first quarter of an hour is shorter than the fit's records
    }
    Double length = reading.values().get("pool_length_mm");
    Double width = reading.values().getOrDefault("pool_width_mm", length);
    Double depth = reading.values().get("pool_depth_mm");
    Double wall = reading.values().get("wall_c");
    if (length != null && width != null) {
      got.add(
          new TestFit.Got(
              new WickFit.Want(hours, WickFit.Kind.POOL_RADIUS_MM), (length + width) / 4));
    }
    if (depth != null) {
      got.add(new TestFit.Got(new WickFit.Want(hours, WickFit.Kind.POOL_DEPTH_MM), depth));
    }
    if (wall != null) {
      got.add(new TestFit.Got(new WickFit.Want(hours, WickFit.Kind.WALL_C), wall));
    }
  }

  private static List<String> lines(Read read, TestFit fit) {
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "Stands on %s, %s, and a weighed burn rate of %.2f g/h.",
            Counted.of(read.tests(), "closed test", "closed tests"),
            Counted.of(read.seen().size(), "reading", "readings"),
            read.rate));
    int free = read.seen().size() - fit.fitted().estimates().size();
    lines.add(
        String.format(
            Locale.ROOT,
            "Misfit %.1f where about %d is expected%s.",
            fit.fitted().misfit(),
            free,
            fit.fitted().misfit() > 2.0 * Math.max(1, free)
                ? ": the model does not follow these readings"
                : ""));
    if (read.tests() < TESTS_MIN) {
      lines.add("Fewer than three tests: no wall temperature is told, only more or less.");
    }
    score(lines, fit, WickFit.Kind.POOL_RADIUS_MM, "mm of the pool's half width");
    score(lines, fit, WickFit.Kind.POOL_DEPTH_MM, "mm of its depth");
    score(lines, fit, WickFit.Kind.WALL_C, "K of the wall");
    if (fit.foretold().isEmpty()) {
      lines.add("No later test yet to hold it against.");
    }
    return lines;
  }

  /** Each test foretold from those before it, and all of them together. */
  private static List<List<String>> running(Burn burn, Read read) {
    if (read.tests() < 2) {
      return List.of();
    }
    List<List<String>> rows = new ArrayList<>();
    List<TestFit.Foretold> all = new ArrayList<>();
    List<List<TestFit.Foretold>> each = TestFit.running(burn, read.each());
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
        List.of(WickFit.Kind.POOL_RADIUS_MM, WickFit.Kind.POOL_DEPTH_MM, WickFit.Kind.WALL_C)) {
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
      boolean wall = want.kind() == WickFit.Kind.WALL_C;
      String words =
          switch (want.kind()) {
            case POOL_RADIUS_MM -> "half the pool's width, mm";
            case POOL_DEPTH_MM -> "pool depth, mm";
            case WALL_C -> "outer wall, °C";
          };
      double off = f.said() - f.got().value();
      rows.add(
          List.of(
              words + ", after " + Plot.plain(want.hours()) + " h",
              Plot.plain(f.got().value()),
              wall && !calibrated ? (off > 0 ? "more" : "less") : Plot.plain(f.said()),
              String.format(Locale.ROOT, "%+.1f", off)));
    }
    return rows;
  }
}

package pourwright.page.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pourwright.burn.BurnRate;
import pourwright.burn.Reading;
import pourwright.burn.Repeats;
import pourwright.card.CandleDesign;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.work.Books;
import pourwright.work.BurnTest;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;

/** Wicks side by side: all candles burnt in one vessel with one pour, by the wick that they had. */
final class CompareRoutes {
  private static final int TESTS = 200;

  /** House: a pool is read to about so much, so one this near to the wall has reached it. */
  private static final double READ_TO_MM = 3;

  private final Desk desk;

  CompareRoutes(Desk desk) {
    this.desk = desk;
  }

  /** What the candles of one wick read. */
  private static final class Seen {
    private int tests;
    private int candles;
    private int passed;
    private int failed;
    private int filled;
    private final List<Double> rates = new ArrayList<>();
    private final List<Double> pools = new ArrayList<>();
    private final List<Double> fullAfter = new ArrayList<>();
    private final List<Double> flames = new ArrayList<>();
  }

  void addTo(RoutesConfig routes) {
    routes.get("/shelf/wicks", this::show);
  }

  private void show(Context http) {
    Form form = Form.asked(http);
    Show.page(http, "shelf/wicks.jte", desk.studio().look(books -> page(books, form)));
  }

  private static ComparePage page(Books books, Form form) {
    Map<String, String> candles = new LinkedHashMap<>();
    books.cards().all(Drawers.CANDLE).forEach(c -> candles.put(c.code(), c.body().name()));
    String first = candles.keySet().stream().findFirst().orElse("");
    String code = candles.containsKey(form.value("candle")) ? form.value("candle") : first;
    Optional<CandleDesign> asked =
        books.cards().current(Drawers.CANDLE, code).map(CardVersion::body);
    if (asked.isEmpty()) {
      return new ComparePage(form, candles, "", List.of(), List.of());
    }
    Map<String, Seen> wicks = seen(books, asked.get());
    List<List<String>> rows = new ArrayList<>();
    wicks.forEach(
        (wick, s) ->
            rows.add(
                List.of(
                    wick,
                    String.valueOf(s.tests),
                    String.valueOf(s.candles),
                    s.passed + " and " + s.failed,
                    s.filled + " of " + s.candles)));
    List<Dots> dots = new ArrayList<>();
    draw(dots, "Burn rate of each wick", "g/h", wicks, s -> s.rates);
    draw(dots, "Pool at the end of the first cycle", "mm", wicks, s -> s.pools);
    draw(dots, "First read full after", "h", wicks, s -> s.fullAfter);
    draw(dots, "Highest flame", "mm", wicks, s -> s.flames);
    CandleDesign design = asked.get();
    String about =
        "Vessel "
            + design.vessel()
            + ", pour "
            + design.pour()
            + ", wicks: "
            + design.wicks().count();
    return new ComparePage(form.with("candle", code), candles, about, rows, dots);
  }

  private static void draw(
      List<Dots> dots,
      String title,
      String unit,
      Map<String, Seen> wicks,
      java.util.function.Function<Seen, List<Double>> of) {
    Map<String, Repeats> repeats = new LinkedHashMap<>();
    wicks.forEach((wick, s) -> Repeats.of(of.apply(s)).ifPresent(r -> repeats.put(wick, r)));
    if (!repeats.isEmpty()) {
      dots.add(Dots.of(title, unit, repeats));
    }
  }

  private static Map<String, Seen> seen(Books books, CandleDesign asked) {
    Map<String, Seen> wicks = new TreeMap<>();
    Map<String, Optional<CandleDesign>> cards = new LinkedHashMap<>();
    for (BurnTest test : books.burns().list(null, null, TESTS).items()) {
      Optional<CandleDesign> burnt =
          cards.computeIfAbsent(
              test.candle() + " " + test.candleVersion(),
              k ->
                  books
                      .cards()
                      .version(Drawers.CANDLE, test.candle(), test.candleVersion())
                      .map(CardVersion::body));
      if (burnt.isPresent() && isLike(burnt.get(), asked)) {
        read(books, test, burnt.get(), wicks);
      }
    }
    return wicks;
  }

  private static boolean isLike(CandleDesign burnt, CandleDesign asked) {
    return burnt.vessel().equals(asked.vessel())
        && burnt.pour().equals(asked.pour())
        && burnt.wicks().count() == asked.wicks().count();
  }

  private static void read(
      Books books, BurnTest test, CandleDesign burnt, Map<String, Seen> wicks) {
    Seen seen = wicks.computeIfAbsent(burnt.wicks().wick(), w -> new Seen());
    Optional<Double> full = GrowthViews.opening(books, burnt);
    BurnTest.Closed closed = test.closed();
    seen.tests++;
    seen.passed += closed != null && closed.verdict().equals("pass") ? 1 : 0;
    seen.failed += closed != null && closed.verdict().equals("fail") ? 1 : 0;
    for (TestReader.Sample sample : TestReader.samples(books, test.id())) {
      sample(sample, burnt.wicks().count(), full, seen);
    }
  }

  /** A candle counts once: the mean of its usual cycles, and the first of them for the pool. */
  private static void sample(
      TestReader.Sample sample, int wicks, Optional<Double> full, Seen seen) {
    List<TestReader.Burnt> usual =
        sample.cycles().stream().filter(c -> !c.early() && !c.kind().isMisuse()).toList();
    if (usual.isEmpty()) {
      return;
    }
    seen.candles++;
    usual.stream()
        .flatMap(c -> BurnRate.of(c.judged(), BurnRate.USUAL_RESOLUTION_G).stream())
        .mapToDouble(r -> r.gramsPerHour() / wicks)
        .average()
        .ifPresent(seen.rates::add);
    usual.stream()
        .flatMap(c -> c.judged().readings().stream())
        .flatMap(r -> value(r, "flame_height_mm").stream())
        .mapToDouble(f -> f)
        .max()
        .ifPresent(seen.flames::add);
    List<Reading> first = usual.get(0).judged().readings();
    first.stream()
        .flatMap(r -> pool(r).stream())
        .reduce((before, last) -> last)
        .ifPresent(seen.pools::add);
    Optional<Double> after =
        full.flatMap(
            mm ->
                first.stream()
                    .filter(r -> pool(r).orElse(0.0) >= mm - READ_TO_MM)
                    .map(r -> r.minute() / 60)
                    .findFirst());
    after.ifPresent(seen.fullAfter::add);
    seen.filled += after.isPresent() ? 1 : 0;
  }

  private static Optional<Double> value(Reading reading, String name) {
    return Optional.ofNullable(reading.values().get(name));
  }

  private static Optional<Double> pool(Reading reading) {
    return value(reading, "pool_length_mm");
  }
}

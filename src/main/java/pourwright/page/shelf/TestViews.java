package pourwright.page.shelf;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.burn.BurnJudge;
import pourwright.burn.BurnRate;
import pourwright.burn.BurnRules;
import pourwright.burn.Evidence;
import pourwright.burn.LiveLimit;
import pourwright.burn.Reading;
import pourwright.burn.Verdict;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Kept;
import pourwright.work.Books;
import pourwright.work.BurnTest;
import pourwright.work.Proving;
import pourwright.work.Subject;

/** Makes the pages of tests out of what the books hold. */
final class TestViews {
  private static final int LISTED = 50;
  private final Desk desk;
  private final Kept<Map<Long, String>> verdicts = new Kept<>();

  TestViews(Desk desk) {
    this.desk = desk;
  }

  /** The shelf itself. */
  ShelfPage shelf(String purpose) {
    return desk.studio()
        .look(
            books -> {
              List<ShelfPage.Line> open = new ArrayList<>();
              List<ShelfPage.Line> closed = new ArrayList<>();
              List<BurnTest> tests = books.burns().list(null, null, LISTED).items();
              Map<Long, String> soFar =
                  verdicts.get(books.burns().edition(), () -> verdicts(books, tests));
              for (BurnTest test : tests) {
                BurnTest.Closed close = test.closed();
                String word = close == null ? soFar.getOrDefault(test.id(), "") : close.verdict();
                (close == null ? open : closed).add(line(test, word));
              }
              List<ShelfPage.Line> burning =
                  books.burns().burning().stream().map(c -> burning(books, c)).toList();
              List<ShelfPage.Line> designs = new ProofViews(desk, books).words();
              return new ShelfPage(purpose, burning, open, closed, designs, !designs.isEmpty());
            });
  }

  /** What the tests that go on have come to so far, by the facts of the shelf alone. */
  private static Map<Long, String> verdicts(Books books, List<BurnTest> tests) {
    Map<Long, String> words = new LinkedHashMap<>();
    for (BurnTest test : tests) {
      if (test.closed() == null) {
        words.put(test.id(), verdict(books, test).outcome().word());
      }
    }
    return words;
  }

  private ShelfPage.Line line(BurnTest test, String word) {
    return new ShelfPage.Line(
        "/shelf/test/" + test.id(),
        "Test " + test.id() + ": " + test.candle() + ", version " + test.candleVersion(),
        test.purpose() + " · begun " + desk.dayAndTime(test.startedAt()) + " by " + test.by(),
        words(word) + (test.closed() == null ? " so far" : ""),
        tone(word));
  }

  private ShelfPage.Line burning(Books books, BurnTest.Cycle cycle) {
    long test = books.burns().testOfCycle(cycle.id());
    return new ShelfPage.Line(
        "/shelf/cycle/" + cycle.id(),
        "Test " + test + ", cycle " + cycle.number(),
        "lit at " + desk.clockTime(cycle.litAt()) + ", " + minutes(cycle) + " min ago",
        "burns",
        "warn");
  }

  static Verdict verdict(Books books, BurnTest test) {
    return BurnJudge.judge(
        rules(test),
        TestReader.samples(books, test.id()).stream().map(TestReader.Sample::judged).toList());
  }

  static BurnRules rules(BurnTest test) {
    return BurnRules.known().contains(test.rules())
        ? BurnRules.named(test.rules())
        : BurnRules.named("house");
  }

  static String words(String code) {
    return code.replace('_', ' ');
  }

  static String tone(String code) {
    return switch (code) {
      case "pass" -> "good";
      case "fail" -> "stop";
      default -> "warn";
    };
  }

  /** One test, or nothing when there is none of that number. */
  Optional<TestPage> test(long id, Form form) {
    return desk.studio().look(books -> books.burns().test(id).map(test -> page(books, test, form)));
  }

  private TestPage page(Books books, BurnTest test, Form form) {
    List<TestReader.Sample> samples = TestReader.samples(books, test.id());
    Verdict verdict = verdict(books, test);
    Optional<BurnTest.Proof> proof = books.burns().proof(test.candle(), test.candleVersion());
    BurnTest.Closed closed = test.closed();
    List<String> lines = new ArrayList<>();
    lines.add(test.purpose());
    lines.add("rules: " + test.rules());
    lines.add("begun " + desk.dayAndTime(test.startedAt()) + " by " + test.by());
    if (closed != null) {
      lines.add(
          "closed "
              + desk.dayAndTime(closed.at())
              + " by "
              + closed.by()
              + ": "
              + words(closed.verdict()));
    }
    return new TestPage(
        form,
        test.id(),
        "Test " + test.id() + ": " + test.candle() + ", version " + test.candleVersion(),
        lines,
        closed == null,
        samples.stream().map(this::sample).toList(),
        verdict(verdict, samples.size()),
        limits(rules(test)),
        plots(samples),
        GrowthViews.of(books, test, samples),
        logged(samples),
        books.attachments().of(Subject.of(Subject.Kind.BURN_TEST, test.id())).stream()
            .map(a -> List.of("/files/" + a.id(), a.name() + ", " + desk.dayAndTime(a.at())))
            .toList(),
        proof
            .map(p -> (p.proved() ? "" : "withdrawn: ") + p.statement() + " (" + p.by() + ")")
            .orElse(""),
        closed != null && closed.verdict().equals("pass"),
        ProofViews.rule(books),
        new Proving(books).missing(test.candle(), test.candleVersion()));
  }

  /** Cycles that a log may belong to, the latest first. */
  private List<List<String>> logged(List<TestReader.Sample> samples) {
    List<TestReader.Burnt> all = new ArrayList<>();
    samples.forEach(s -> all.addAll(s.cycles()));
    all.sort(Comparator.comparing((TestReader.Burnt b) -> b.cycle().litAt()).reversed());
    Map<Long, String> labels = new LinkedHashMap<>();
    samples.forEach(s -> labels.put(s.sample().id(), s.sample().label()));
    return all.stream()
        .map(TestReader.Burnt::cycle)
        .map(
            c ->
                List.of(
                    String.valueOf(c.id()),
                    labels.get(c.sample())
                        + ", cycle "
                        + c.number()
                        + ", "
                        + desk.dayAndTime(c.litAt())))
        .toList();
  }

  private TestPage.VerdictView verdict(Verdict verdict, int samples) {
    String code = verdict.outcome().word();
    List<String> reasons =
        verdict.findings().stream().map(f -> f.sentence() + " [" + f.source() + "]").toList();
    String evidence =
        verdict.outcome() == Verdict.Outcome.PASS ? Evidence.sentence(samples, samples) : "";
    return new TestPage.VerdictView(words(code), tone(code), reasons, evidence, code);
  }

  private static List<List<String>> limits(BurnRules rules) {
    return rules.limits().stream()
        .map(
            l ->
                List.of(
                    l.rule(),
                    l.words(),
                    l.needed() ? "must be read" : "noted when seen",
                    l.source()))
        .toList();
  }

  private TestPage.SampleView sample(TestReader.Sample sample) {
    Optional<TestReader.Burnt> burning = sample.burning();
    boolean ended = sample.end().isGood() || sample.end().isBad();
    String state =
        burning.isPresent()
            ? "burning for " + minutes(burning.get().cycle()) + " min"
            : ended ? "ended: " + words(sample.end().word()) : resting(sample);
    return new TestPage.SampleView(
        sample.sample().id(),
        sample.sample().label(),
        state,
        burning.map(b -> b.cycle().id()).orElse(0L),
        ended,
        sample.cycles().stream().map(this::cycle).toList());
  }

  private String resting(TestReader.Sample sample) {
    if (sample.cycles().isEmpty()) {
      return "not lit yet";
    }
    BurnTest.Cycle last = sample.cycles().get(sample.cycles().size() - 1).cycle();
    if (last.endedAt() == null) {
      return "";
    }
    java.time.Instant ready = last.endedAt().plus(TestReader.REST);
    return ready.isAfter(desk.now())
        ? "rests until " + desk.clockTime(ready) + " (house: 4 h and the base cold)"
        : "rested, may be lit";
  }

  private TestPage.CycleView cycle(TestReader.Burnt burnt) {
    BurnTest.Cycle cycle = burnt.cycle();
    String rate =
        BurnRate.of(burnt.judged(), BurnRate.USUAL_RESOLUTION_G)
            .map(
                r ->
                    String.format(
                        Locale.ROOT,
                        "%.2f g/h (%.2f to %.2f)",
                        r.gramsPerHour(),
                        r.low(),
                        r.high()))
            .orElse("not weighed twice");
    return new TestPage.CycleView(
        "/shelf/cycle/" + cycle.id(),
        "Cycle " + cycle.number() + (burnt.kind().isMisuse() ? ", " + burnt.kind().words() : ""),
        desk.dayAndTime(cycle.litAt()),
        cycle.ended() == null ? "burns" : words(cycle.ended()),
        rate,
        missed(burnt),
        burnt.early());
  }

  private String missed(TestReader.Burnt burnt) {
    List<Integer> bells = burnt.missedBells(desk.now());
    return bells.isEmpty()
        ? ""
        : "no reading at "
            + bells.stream().map(String::valueOf).collect(java.util.stream.Collectors.joining(", "))
            + " min";
  }

  private static List<Plot> plots(List<TestReader.Sample> samples) {
    List<Plot> plots = new ArrayList<>();
    add(
        plots,
        samples,
        "flame_height_mm",
        "Flame height, mm",
        new Plot.Limit(LiveLimit.STOP_FLAME_MM, "75 mm: stop"));
    add(plots, samples, "pool_length_mm", "Melt pool, mm", Plot.Limit.NONE);
    add(plots, samples, "mass_g", "Mass, g", Plot.Limit.NONE);
    add(plots, samples, "wall_c", "Outer wall, °C", Plot.Limit.NONE);
    return plots;
  }

  private static void add(
      List<Plot> plots,
      List<TestReader.Sample> samples,
      String reading,
      String title,
      Plot.Limit limit) {
    Map<String, List<double[]>> series = new LinkedHashMap<>();
    for (TestReader.Sample sample : samples) {
      for (TestReader.Burnt burnt : sample.cycles()) {
        List<double[]> points = new ArrayList<>();
        for (Reading read : burnt.judged().readings()) {
          Double value = read.values().get(reading);
          if (value != null) {
            points.add(new double[] {read.minute(), value});
          }
        }
        if (points.size() > 1) {
          series.put(sample.sample().label() + "-" + burnt.cycle().number(), points);
        }
      }
    }
    if (!series.isEmpty()) {
      plots.add(Plot.of(title, series, limit));
    }
  }

  /** One cycle, or nothing. */
  Optional<CyclePage> cycle(long id, Form form) {
    return desk.studio()
        .look(books -> books.burns().cycle(id).map(cycle -> page(books, cycle, form)));
  }

  private CyclePage page(Books books, BurnTest.Cycle cycle, Form form) {
    List<BurnTest.Seen> seen = books.burns().seen(cycle.id());
    long test = books.burns().testOfCycle(cycle.id());
    String label =
        books.burns().samples(test).stream()
            .filter(s -> s.id() == cycle.sample())
            .map(BurnTest.Sample::label)
            .findFirst()
            .orElse("");
    LiveLimit.Call call =
        seen.isEmpty()
            ? new LiveLimit.Call(LiveLimit.CALM, "")
            : LiveLimit.of(TestReader.reading(seen.get(seen.size() - 1).look()));
    List<List<String>> rows = new ArrayList<>();
    for (BurnTest.Seen one : seen) {
      rows.add(0, row(one.look()));
    }
    return new CyclePage(
        form,
        cycle.id(),
        test,
        label + ", cycle " + cycle.number(),
        String.valueOf(minutes(cycle)),
        desk.clockTime(cycle.litAt()),
        cycle.endedAt() == null,
        call.limit().name().toLowerCase(Locale.ROOT),
        call.sentence(),
        rows);
  }

  private static List<String> row(BurnTest.Look look) {
    Map<String, Double> values = TestReader.reading(look).values();
    List<String> row = new ArrayList<>();
    row.add(Plot.plain(look.minute()));
    for (String name :
        List.of(
            "mass_g", "flame_height_mm", "pool_length_mm", "pool_depth_mm", "wall_c", "base_c")) {
      Double value = values.get(name);
      row.add(value == null ? "" : Plot.plain(value));
    }
    List<String> notes = new ArrayList<>();
    for (String event : List.of("soot", "mushroom", "smoke", "crack", "seep")) {
      Double value = values.get(event);
      if (value != null && value > 0) {
        notes.add(event);
      }
    }
    if (!look.note().isBlank()) {
      notes.add(look.note());
    }
    row.add(String.join(", ", notes));
    return row;
  }

  /** Whole minutes since lighting, to the end where it is out. */
  long minutes(BurnTest.Cycle cycle) {
    java.time.Instant to = cycle.endedAt() == null ? desk.now() : cycle.endedAt();
    return Duration.between(cycle.litAt(), to).toMinutes();
  }
}

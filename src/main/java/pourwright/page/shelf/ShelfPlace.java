package pourwright.page.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.burn.BurnRules;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Place;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.work.Act;
import pourwright.work.BurnTest;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.RunBurnTest;
import pourwright.work.Subject;

/** Burn tests, verdicts, and what to test next. */
public final class ShelfPlace implements Place {
  private final Desk desk;
  private final TestViews views;
  private final BurningRoutes burning;
  private final RunRoutes runs;

  /** The place, with the clock and zone of the studio. */
  public ShelfPlace(Desk desk) {
    this.desk = desk;
    this.views = new TestViews(desk);
    this.burning = new BurningRoutes(desk, views);
    this.runs = new RunRoutes(desk);
  }

  @Override
  public String name() {
    return "Test shelf";
  }

  @Override
  public String path() {
    return "/shelf";
  }

  @Override
  public String purpose() {
    return "Burn tests, verdicts, and what to test next.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), http -> Show.page(http, "shelf/shelf.jte", views.shelf(purpose())));
    routes.get("/shelf/new", http -> Show.page(http, "shelf/new.jte", fresh(Form.blank())));
    routes.post("/shelf/new", this::begin);
    routes.get("/shelf/test/{id}", this::test);
    routes.post("/shelf/test/{id}/close", this::close);
    routes.post("/shelf/test/{id}/word", this::word);
    new LightRoutes(desk, views).addTo(routes);
    burning.addTo(routes);
    new LogRoutes(desk, views).addTo(routes);
    runs.addTo(routes);
    new NextRoutes(desk).addTo(routes);
    new CompareRoutes(desk).addTo(routes);
    new RuleRoutes(desk).addTo(routes);
    new FitRoutes(desk).addTo(routes);
  }

  static long number(String text) {
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException e) {
      throw new NotFoundResponse();
    }
  }

  private NewTestPage fresh(Form form) {
    Map<String, String> candles = new LinkedHashMap<>();
    for (CardVersion<pourwright.card.CandleDesign> card :
        desk.studio().look(books -> books.cards().all(Drawers.CANDLE))) {
      candles.put(card.code(), card.body().name() + " (version " + card.version() + ")");
    }
    Map<String, String> rules = new LinkedHashMap<>();
    rules.put("house", "house rules");
    rules.put(BurnRules.CHECK, "house rules, one candle: a check burn of a new lot");
    BurnRules.known().forEach(r -> rules.putIfAbsent(r, "limits after " + r));
    return new NewTestPage(form, candles, rules);
  }

  private void begin(Context http) {
    Form form = Form.of(http);
    NewTestPage page = fresh(form);
    Optional<String> candle =
        form.choice("candle", "a candle design", List.copyOf(page.candles().keySet()));
    Optional<String> rules =
        form.choice("rules", "a set of rules", List.copyOf(page.rules().keySet()));
    String purpose = form.text("purpose", "what the test is to show");
    List<RunBurnTest.NewSample> samples = samples(form);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty() || candle.isEmpty() || rules.isEmpty()) {
      Show.again(http, "shelf/new.jte", page);
      return;
    }
    int version =
        desk.studio()
            .look(books -> books.cards().current(Drawers.CANDLE, candle.get()))
            .map(CardVersion::version)
            .orElse(1);
    Outcome<BurnTest> outcome =
        desk.studio()
            .burnTests
            .begin(
                act.get(),
                new RunBurnTest.Request(candle.get(), version, rules.get(), purpose, samples));
    if (outcome instanceof Outcome.Refused<BurnTest> refused) {
      form.complain("samples", refused.sentence() + ": " + refused.hint());
      Show.again(http, "shelf/new.jte", page);
    } else {
      Show.done(http, Said.done("The test has begun."), "/shelf/test/" + outcome.made().id());
    }
  }

  /** One sample a line; a candle's mark where it has one. */
  private List<RunBurnTest.NewSample> samples(Form form) {
    List<RunBurnTest.NewSample> samples = new ArrayList<>();
    for (String line : form.text("samples", "at least one sample").lines().toList()) {
      if (!line.isBlank()) {
        samples.add(new RunBurnTest.NewSample(line.strip(), piece(line.strip())));
      }
    }
    return samples;
  }

  private @Nullable Long piece(String text) {
    try {
      return desk.studio()
          .find(pourwright.batch.Mark.read(text))
          .filter(s -> s.kind() == Subject.Kind.PIECE)
          .map(Subject::number)
          .orElse(null);
    } catch (RuntimeException e) {
      return null; // no mark: a candle that was never in the books
    }
  }

  private void test(Context http) {
    long id = number(http.pathParam("id"));
    Show.page(
        http, "shelf/test.jte", views.test(id, Form.blank()).orElseThrow(NotFoundResponse::new));
  }

  private void again(Context http, long id, Form form) {
    Show.again(http, "shelf/test.jte", views.test(id, form).orElseThrow(NotFoundResponse::new));
  }

  private void close(Context http) {
    long id = number(http.pathParam("id"));
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, "");
    Optional<TestPage> page = views.test(id, form);
    if (page.isEmpty()) {
      throw new NotFoundResponse();
    }
    if (page.get().samples().stream().anyMatch(s -> s.burns() > 0)) {
      form.complain("by", "A sample burns; put it out first.");
    }
    if (!form.ok() || act.isEmpty()) {
      again(http, id, form);
      return;
    }
    TestPage.VerdictView verdict = page.get().verdict();
    Outcome<BurnTest> outcome =
        desk.studio()
            .burnTests
            .close(act.get(), id, verdict.code(), String.join("\n", reasons(page.get())));
    Said said =
        outcome instanceof Outcome.Refused<BurnTest> refused
            ? Said.refused(refused)
            : Said.done("Closed: " + verdict.word() + ".");
    Show.done(http, said, "/shelf/test/" + id);
  }

  /** What the verdict rests on; bells that nobody answered are written down with it. */
  private static List<String> reasons(TestPage page) {
    List<String> reasons = new ArrayList<>(page.verdict().reasons());
    for (TestPage.SampleView sample : page.samples()) {
      for (TestPage.CycleView cycle : sample.cycles()) {
        if (!cycle.missed().isEmpty()) {
          reasons.add(sample.label() + ", " + cycle.name() + ": " + cycle.missed());
        }
      }
    }
    return reasons;
  }

  private void word(Context http) {
    long id = number(http.pathParam("id"));
    Form form = Form.of(http);
    Optional<String> kind =
        form.choice(
            "kind", "proved, limited or withdrawn", List.of("proved", "limited", "withdrawn"));
    String why = form.text("why", "the reason, in your words");
    Optional<Act> act = form.act(http, "");
    Optional<BurnTest> test = desk.studio().look(books -> books.burns().test(id));
    if (!form.ok() || act.isEmpty() || kind.isEmpty() || test.isEmpty()) {
      again(http, id, form);
      return;
    }
    String statement =
        switch (kind.get()) {
          case "proved" -> "proved for sale: " + why;
          case "limited" -> "limited to " + why;
          default -> why;
        };
    boolean proved = !kind.get().equals("withdrawn");
    Outcome<BurnTest.Proof> outcome =
        desk.studio()
            .burnTests
            .word(
                act.get(),
                new RunBurnTest.Word(
                    test.get().candle(), test.get().candleVersion(), id, proved, statement));
    Said said =
        outcome instanceof Outcome.Refused<BurnTest.Proof> refused
            ? Said.refused(refused)
            : Said.done("Recorded under " + act.get().by() + ": " + statement + ".");
    Show.done(http, said, "/shelf/test/" + id);
  }
}

package pourwright.page.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.burn.NextTest;
import pourwright.burn.NextTest.Candidate;
import pourwright.burn.NextTest.Foresight;
import pourwright.burn.Vessel;
import pourwright.card.ResolvedCandle;
import pourwright.card.WickPlan;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Circle;
import pourwright.wick.WickMemory;
import pourwright.work.Books;
import pourwright.work.Drawers;
import pourwright.work.Proving;
import pourwright.work.WickCandidates;
import pourwright.work.WickForesight;
import pourwright.work.WickTests;

/** Which of several wicks to test next. */
final class NextRoutes {
  private static final String TEMPLATE = "shelf/next.jte";
  private static final int CELLS = 5;

  /** A usual mix, kg/m³, and a usual wick, g/h, from docs/models/burn.md. */
  private static final double DENSITY = 1900;

  private static final double USUAL_RATE = 5;

  private static final Map<String, Foresight> WORDS =
      Map.of("good", Foresight.GOOD, "bad", Foresight.BAD, "none", Foresight.NONE);

  private final Desk desk;

  NextRoutes(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/shelf/next", http -> Show.page(http, TEMPLATE, blank(usual())));
    routes.post("/shelf/next", this::ask);
  }

  private static Form usual() {
    return Form.startingFrom(Map.of("cost", "10", "wax", "plant", "conductivity", "1.0"));
  }

  private NextPage blank(Form form) {
    return page(form, "", "", new Asked(List.of(), Map.of()));
  }

  /** Candidates, and what was foreseen of each by name where it was asked. */
  private record Asked(List<Candidate> candidates, Map<String, WickForesight> foresight) {}

  private NextPage page(Form form, String advice, String outlook, Asked asked) {
    Map<String, String> candles = new LinkedHashMap<>();
    candles.put("", "type them below");
    desk.studio()
        .look(books -> books.cards().all(Drawers.CANDLE))
        .forEach(c -> candles.put(c.code(), c.body().name()));
    List<List<String>> rows =
        asked.candidates.stream()
            .map(
                c ->
                    List.of(
                        c.name(),
                        memory(asked.foresight.get(c.name())),
                        simulated(asked.foresight.get(c.name())),
                        String.valueOf(c.passed()),
                        String.valueOf(c.failed()),
                        c.likeIt()[0] + " and " + c.likeIt()[1],
                        Math.round(100 * c.chanceToPass()) + " %"))
            .toList();
    String rule = desk.studio().look(ProofViews::rule);
    return new NextPage(form, candles, SimulationForm.waxChoices(), rule, advice, outlook, rows);
  }

  private static String memory(@Nullable WickForesight seen) {
    return seen == null ? "" : seen.rate();
  }

  private static String simulated(@Nullable WickForesight seen) {
    return seen == null ? "" : seen.simulated();
  }

  /** The wicks on file, each simulated at what wick memory says of its burn rate. */
  private Asked onFile(Form form, String code) {
    Optional<Double> cost = form.read("cost", "a cost", t -> number(t, 0.01, 1e6));
    Optional<Double> k = form.read("conductivity", "a number", t -> number(t, .05, 5));
    Optional<String> wax =
        form.choice("wax", "a wax", List.copyOf(SimulationForm.waxChoices().keySet()));
    if (cost.isEmpty() || k.isEmpty() || wax.isEmpty()) {
      return new Asked(List.of(), Map.of());
    }
    Setting setting = desk.studio().look(books -> setting(books, code, cost.get(), k.get()));
    Map<String, WickForesight> foresight = new LinkedHashMap<>();
    List<Candidate> seen = new ArrayList<>();
    for (Candidate candidate : setting.candidates) {
      Optional<WickForesight> f = setting.foresee(candidate.name(), wax.get());
      f.ifPresent(x -> foresight.put(candidate.name(), x));
      seen.add(f.map(x -> candidate.seeing(x.share())).orElse(candidate));
    }
    return new Asked(seen, foresight);
  }

  /** What the books say, so that simulating keeps no book open. */
  private record Setting(
      List<Candidate> candidates,
      Optional<ResolvedCandle> candle,
      Optional<Vessel> vessel,
      WickMemory memory) {

    Optional<WickForesight> foresee(String wick, String wax) {
      if (candle.isEmpty() || vessel.isEmpty()) {
        return Optional.empty();
      }
      WickPlan plan = candle.get().design().wicks();
      boolean round = plan.count() == 1 && vessel.get().cavity().bottom() instanceof Circle;
      try {
        return Optional.of(
            WickForesight.of(
                memory.propose(WickTests.burnt(candle.get(), wick)),
                rate -> SimulationForm.candle(vessel.get(), wax, plan, rate),
                round));
      } catch (OutOfRange e) {
        return Optional.empty(); // a wick stands outside, or the vessel cannot be laid in cells
      }
    }
  }

  private static Setting setting(Books books, String code, double cost, double conductivity) {
    Optional<ResolvedCandle> candle = Optional.empty();
    try {
      candle =
          books
              .cards()
              .current(Drawers.CANDLE, code)
              .map(c -> c.body().resolve(Drawers.book(books)));
    } catch (OutOfRange e) {
      // a card of it is missing: the tests alone decide
    }
    return new Setting(
        WickCandidates.of(books, code, cost),
        candle,
        TestedCandle.vessel(books, code, conductivity, DENSITY),
        new WickMemory(USUAL_RATE, WickTests.of(books).rates()));
  }

  private static Double number(String text, double least, double most) {
    double value = Double.parseDouble(text.replace(',', '.'));
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException("from " + least + " to " + most);
    }
    return value;
  }

  private void ask(Context http) {
    Form form = Form.of(http);
    List<Candidate> candidates = new ArrayList<>();
    Map<String, WickForesight> foresight = Map.of();
    String candle = form.value("candle");
    if (candle.isEmpty()) {
      for (String line : form.text("candidates", "at least one candidate").lines().toList()) {
        candidate(form, line).ifPresent(candidates::add);
      }
    } else {
      Asked asked = onFile(form, candle);
      candidates.addAll(asked.candidates);
      foresight = asked.foresight;
      if (form.ok() && candidates.isEmpty()) {
        form.complain("candle", "No wick is on file: write one down on the drawing board first.");
      }
    }
    if (!form.ok() || candidates.isEmpty()) {
      Show.again(http, TEMPLATE, blank(form));
      return;
    }
    NextTest.Advice advice =
        NextTest.among(
            candidates,
            Math.max(1, desk.studio().look(books -> new Proving(books).rule()).fullLives()));
    String outlook =
        String.format(
            Locale.ROOT,
            "In this order about %.1f tests at a cost of %.0f to expect until one is proved or all"
                + " have failed; a chance of %.0f %% that one of them is proved.",
            advice.expectedTests(),
            advice.expectedCost(),
            100 * advice.chance());
    Show.page(http, TEMPLATE, page(form, advice.why(), outlook, new Asked(candidates, foresight)));
  }

  /** Name; passed; failed; good, bad or none; cost of a test. */
  private static Optional<Candidate> candidate(Form form, String line) {
    String[] cells = line.split(";", -1);
    try {
      if (cells.length == CELLS) {
        Foresight seen = WORDS.get(cells[3].strip().toLowerCase(Locale.ROOT));
        if (seen != null) {
          return Optional.of(
              new Candidate(
                  cells[0].strip(),
                  new int[] {0, 0},
                  seen,
                  Integer.parseInt(cells[1].strip()),
                  Integer.parseInt(cells[2].strip()),
                  Double.parseDouble(cells[4].strip())));
        }
      }
      form.complain("candidates", "'" + line + "' has not the five parts of the example.");
    } catch (IllegalArgumentException e) {
      form.complain("candidates", "'" + line + "' has a number that cannot be.");
    }
    return Optional.empty();
  }
}

package pourwright.page.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.burn.NextTest;
import pourwright.burn.NextTest.Candidate;
import pourwright.burn.NextTest.Foresight;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.work.Drawers;
import pourwright.work.Proving;
import pourwright.work.WickCandidates;

/** Which of several wicks to test next. */
final class NextRoutes {
  private static final String TEMPLATE = "shelf/next.jte";
  private static final int CELLS = 5;

  /** Wicks on file are taken to cost the same to test. */
  private static final double SAME_COST = 1;

  private static final Map<String, Foresight> WORDS =
      Map.of("good", Foresight.GOOD, "bad", Foresight.BAD, "none", Foresight.NONE);

  private final Desk desk;

  NextRoutes(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/shelf/next", http -> Show.page(http, TEMPLATE, blank(Form.blank())));
    routes.post("/shelf/next", this::ask);
  }

  private NextPage blank(Form form) {
    return page(form, "", "", List.of());
  }

  private NextPage page(Form form, String advice, String outlook, List<Candidate> candidates) {
    Map<String, String> candles = new LinkedHashMap<>();
    candles.put("", "type them below");
    desk.studio()
        .look(books -> books.cards().all(Drawers.CANDLE))
        .forEach(c -> candles.put(c.code(), c.body().name()));
    List<List<String>> rows =
        candidates.stream()
            .map(
                c ->
                    List.of(
                        c.name(),
                        String.valueOf(c.passed()),
                        String.valueOf(c.failed()),
                        c.likeIt()[0] + " and " + c.likeIt()[1],
                        Math.round(100 * c.chanceToPass()) + " %"))
            .toList();
    String rule = desk.studio().look(ProofViews::rule);
    return new NextPage(form, candles, rule, advice, outlook, rows);
  }

  private void ask(Context http) {
    Form form = Form.of(http);
    List<Candidate> candidates = new ArrayList<>();
    String candle = form.value("candle");
    if (candle.isEmpty()) {
      for (String line : form.text("candidates", "at least one candidate").lines().toList()) {
        candidate(form, line).ifPresent(candidates::add);
      }
    } else {
      candidates.addAll(desk.studio().look(books -> WickCandidates.of(books, candle, SAME_COST)));
      if (candidates.isEmpty()) {
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
            "In this order about %.1f tests to expect until one is proved or all have failed; a"
                + " chance of %.0f %% that one of them is proved.",
            advice.expectedTests(),
            100 * advice.chance());
    Show.page(http, TEMPLATE, page(form, advice.why(), outlook, candidates));
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

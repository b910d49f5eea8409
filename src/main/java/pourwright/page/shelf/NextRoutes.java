package pourwright.page.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.burn.NextTest;
import pourwright.burn.NextTest.Candidate;
import pourwright.burn.NextTest.Foresight;
import pourwright.burn.ProofRule;
import pourwright.page.Form;
import pourwright.page.Show;

/** Which of several wicks to test next. */
final class NextRoutes {
  private static final String TEMPLATE = "shelf/next.jte";
  private static final int CELLS = 5;
  private static final Map<String, Foresight> WORDS =
      Map.of("good", Foresight.GOOD, "bad", Foresight.BAD, "none", Foresight.NONE);

  void addTo(RoutesConfig routes) {
    routes.get("/shelf/next", http -> Show.page(http, TEMPLATE, blank(Form.blank())));
    routes.post("/shelf/next", this::ask);
  }

  private static NextPage blank(Form form) {
    return new NextPage(form, "", "");
  }

  private void ask(Context http) {
    Form form = Form.of(http);
    List<Candidate> candidates = new ArrayList<>();
    for (String line : form.text("candidates", "at least one candidate").lines().toList()) {
      candidate(form, line).ifPresent(candidates::add);
    }
    if (!form.ok() || candidates.isEmpty()) {
      Show.again(http, TEMPLATE, blank(form));
      return;
    }
    NextTest.Advice advice = NextTest.among(candidates, ProofRule.house().fullLives());
    String outlook =
        String.format(
            Locale.ROOT,
            "In this order about %.1f tests to expect until one is proved or all have failed; a"
                + " chance of %.0f %% that one of them is proved.",
            advice.expectedTests(),
            100 * advice.chance());
    Show.page(http, TEMPLATE, new NextPage(form, advice.why(), outlook));
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

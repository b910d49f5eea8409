package pourwright.page.casting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import pourwright.cast.Defect;
import pourwright.cast.DefectCauses;
import pourwright.page.Desk;
import pourwright.page.Show;
import pourwright.page.board.Lengths;
import pourwright.quantity.Counted;
import pourwright.work.CastHistory;

/** What her own casts say: what goes with a defect. */
final class HistoryDesk {
  private final Desk desk;
  private final Lengths numbers;

  HistoryDesk(Desk desk) {
    this.desk = desk;
    this.numbers = new Lengths(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/casting/defects", this::defects);
  }

  private void defects(Context http) {
    CastHistory history = desk.studio().look(CastHistory::of);
    String asked = String.valueOf(http.queryParam("defect"));
    Defect defect =
        Arrays.stream(Defect.values())
            .filter(d -> d.name().equals(asked))
            .findFirst()
            .orElseGet(
                () ->
                    Arrays.stream(Defect.values())
                        .max(Comparator.comparingLong(history::with))
                        .orElse(Defect.BUG_HOLES));
    Show.page(http, "casting/defects.jte", page(history, defect));
  }

  private DefectsPage page(CastHistory history, Defect defect) {
    List<DefectsPage.Choice> choices =
        Arrays.stream(Defect.values())
            .map(
                d ->
                    new DefectsPage.Choice(
                        "/casting/defects?defect=" + d.name(),
                        d.words() + ", " + history.with(d),
                        d == defect))
            .toList();
    List<DefectCauses.Finding> findings = history.look(defect);
    long cases = history.with(defect);
    // an odds ratio of no cases at all is a number without a meaning
    List<DefectsPage.Row> rows =
        cases < DefectCauses.CASES_MIN
            ? List.of()
            : findings.stream().limit(12).map(this::row).toList();
    String said =
        cases < DefectCauses.CASES_MIN
            ? cases
                + " of "
                + Counted.of(history.size(), "cast", "casts")
                + " had it: too few to say anything."
            : findings.stream().anyMatch(DefectCauses.Finding::found)
                ? "What stands out goes with it. That is not yet its cause: change one thing and"
                    + " look again."
                : "Nothing recorded stands out from chance in "
                    + Counted.of(history.size(), "cast.", "casts.");
    return new DefectsPage(
        defect.words(), defect.causes(), defect.remedy(), said, choices, rows, findings.size());
  }

  private DefectsPage.Row row(DefectCauses.Finding f) {
    return new DefectsPage.Row(
        f.condition(),
        f.withDefect() + " of " + f.with(),
        f.withoutDefect() + " of " + f.without(),
        numbers.number(f.oddsRatio(), 1)
            + " ("
            + numbers.number(f.low(), 1)
            + " to "
            + numbers.number(f.high(), 1)
            + ")",
        f.corrected() < 0.001 ? "below 0.001" : numbers.number(f.corrected(), 3),
        f.found());
  }
}

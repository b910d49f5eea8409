package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Locale;
import pourwright.cast.DefectCauses;
import pourwright.cast.DefectCauses.Finding;
import pourwright.page.Desk;
import pourwright.page.Show;
import pourwright.quantity.Counted;
import pourwright.work.TopHistory;

/** How the tops of her pours came out, and what goes with them. */
final class TopsDesk {
  private final Desk desk;

  TopsDesk(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/pouring/tops", http -> Show.page(http, "pouring/tops.jte", page()));
  }

  private TopsPage page() {
    TopHistory history = desk.studio().look(TopHistory::of);
    return new TopsPage(
        history.judged() == 0
            ? "No top was recorded yet: tap it on the page of a pour, the smooth ones too."
            : "Stands on "
                + Counted.of(history.judged(), "pour", "pours")
                + " whose tops were recorded.",
        history.tops().stream().map(t -> row(history, t)).toList());
  }

  private static TopsPage.Row row(TopHistory history, TopHistory.Counted counted) {
    List<TopsPage.Look> looks = counted.findings().stream().map(TopsDesk::look).toList();
    return new TopsPage.Row(
        counted.top().words(),
        counted.pours()
            + " of "
            + Counted.of(history.judged(), "pour", "pours")
            + ", "
            + Counted.of(counted.candles(), "candle", "candles"),
        counted.top().remedy(),
        said(counted),
        looks);
  }

  private static String said(TopHistory.Counted counted) {
    if (counted.pours() < DefectCauses.CASES_MIN) {
      return "Fewer than "
          + DefectCauses.CASES_MIN
          + " pours had it: nothing is found on so few (house).";
    }
    List<String> found =
        counted.findings().stream().filter(Finding::found).map(Finding::condition).toList();
    return found.isEmpty()
        ? "Nothing recorded goes with it beyond chance (5 % over all looks)."
        : "Goes with: " + String.join(", ", found) + ". Not yet its cause.";
  }

  private static TopsPage.Look look(Finding f) {
    return new TopsPage.Look(
        f.condition(),
        f.withDefect() + " of " + f.with(),
        f.withoutDefect() + " of " + f.without(),
        String.format(Locale.ROOT, "%.1f (%.1f to %.1f)", f.oddsRatio(), f.low(), f.high()),
        String.format(Locale.ROOT, "%.3f", f.corrected()),
        f.found());
  }
}

package pourwright.page.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.burn.Band;
import pourwright.burn.BurnResult;
import pourwright.burn.Frame;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.work.Drawers;

/** Simulations: ask, follow, cancel, look at any moment of one. */
final class RunRoutes {
  private final Desk desk;
  private final Runs runs;

  RunRoutes(Desk desk) {
    this.desk = desk;
    this.runs = new Runs(desk.studio().results());
  }

  void addTo(RoutesConfig routes) {
    routes.get(
        "/shelf/simulate",
        http -> Show.page(http, "shelf/simulate.jte", page(SimulationForm.usual())));
    routes.post("/shelf/simulate", this::start);
    routes.get("/shelf/runs/{id}", http -> show(http, "shelf/run.jte"));
    routes.get("/shelf/runs/{id}/part", http -> show(http, "shelf/runpart.jte"));
    routes.get("/shelf/runs/{id}/scene", http -> show(http, "shelf/scene.jte"));
    routes.post("/shelf/runs/{id}/cancel", this::cancel);
  }

  private SimulationPage page(Form form) {
    List<ShelfPage.Line> lines = new ArrayList<>();
    for (Runs.Run run : runs.newestFirst()) {
      lines.add(new ShelfPage.Line("/shelf/runs/" + run.id, run.title, "", state(run), "plain"));
    }
    return new SimulationPage(
        form, SimulationForm.outlineChoices(), SimulationForm.waxChoices(), candles(), lines);
  }

  private void start(Context http) {
    Form form = Form.of(http);
    Optional<SimulationForm.Question> question = SimulationForm.read(form);
    Optional<Beside> beside = question.flatMap(q -> beside(form, q));
    if (question.isEmpty() || !form.ok()) {
      Show.again(http, "shelf/simulate.jte", page(form));
      return;
    }
    Runs.Run run = runs.start(question.get(), beside.orElse(null));
    Show.done(
        http,
        Said.note("Computing.", "A prediction never replaces a burn test."),
        "/shelf/runs/" + run.id);
  }

  /** The tested candle that was asked for; complaints stay in the form. */
  private Optional<Beside> beside(Form form, SimulationForm.Question question) {
    String code = form.value("beside");
    if (code.isEmpty()) {
      return Optional.empty();
    }
    Optional<Beside> found =
        desk.studio()
            .look(books -> TestedCandle.tested(books, code, form.value("wax"), question.burn()));
    if (found.isEmpty()) {
      form.complain(
          "beside", "It has no closed test with weighings, or is not round with one wick.");
    }
    return found;
  }

  private Map<String, String> candles() {
    Map<String, String> candles = new LinkedHashMap<>();
    candles.put("", "none");
    desk.studio()
        .look(books -> books.cards().all(Drawers.CANDLE))
        .forEach(c -> candles.put(c.code(), c.body().name()));
    return candles;
  }

  private Runs.Run run(Context http) {
    return runs.run(ShelfPlace.number(http.pathParam("id"))).orElseThrow(NotFoundResponse::new);
  }

  private void cancel(Context http) {
    Runs.Run run = run(http);
    run.cancel();
    Show.done(http, Said.done("Cancelled."), "/shelf/runs/" + run.id);
  }

  private void show(Context http, String template) {
    Runs.Run run = run(http);
    List<Frame> frames = run.frames();
    String asked = http.queryParam("at");
    int at = frames.size() - 1;
    if (asked != null && asked.matches("\\d{1,6}")) {
      at = Math.min(at, Integer.parseInt(asked));
    }
    Show.page(http, template, page(run, frames, at));
  }

  private static String state(Runs.Run run) {
    if (!run.trouble().isEmpty()) {
      return run.trouble();
    }
    if (run.isCancelled()) {
      return run.isRunning() ? "stopping" : "cancelled";
    }
    return run.isRunning() ? "computing, " + Math.round(100 * run.share()) + " %" : "done";
  }

  private static RunPage page(Runs.Run run, List<Frame> frames, int at) {
    Optional<BurnResult> result = run.result();
    Scene scene = Scene.empty();
    if (at >= 0 && at < frames.size()) {
      Frame frame = frames.get(at);
      String pool = result.map(r -> poolWords(r, at)).orElse("");
      scene = Scene.of(frame, "after " + hours(frame.hours()) + pool);
    }
    return new RunPage(
        run.id,
        run.title,
        state(run),
        (int) Math.round(100 * run.share()),
        run.isRunning(),
        result.map(r -> figures(r, run)).orElse(List.of()),
        result.map(BurnResult::warnings).orElse(List.of()).stream()
            .filter(w -> !w.contains("outer wall"))
            .toList(),
        scene,
        frames.size(),
        Math.max(0, at),
        result.map(r -> rows(r, run.band())).orElse(List.of()));
  }

  private static String poolWords(BurnResult result, int at) {
    if (at >= result.pool().size()) {
      return "";
    }
    BurnResult.Pool pool = result.pool().get(at);
    return String.format(
        Locale.ROOT,
        ": pool %.0f by %.0f mm, %.0f mm deep, %.0f %% of the surface melted",
        pool.lengthMm(),
        pool.widthMm(),
        pool.depthMm(),
        100 * pool.meltedSurface());
  }

  private static String hours(double hours) {
    long minutes = Math.round(hours * 60);
    return minutes / 60 + " h " + minutes % 60 + " min";
  }

  /** A wall or base temperature only where three tests of the vessel's family calibrate it. */
  private static List<List<String>> figures(BurnResult result, Runs.Run run) {
    Optional<Band> band = run.band();
    BurnResult.Balance balance = result.balance();
    List<List<String>> figures = new ArrayList<>();
    figures.add(
        List.of(
            "whole surface melted",
            Double.isNaN(result.fullPoolH())
                ? "not reached"
                : "after " + hours(result.fullPoolH())));
    figures.add(
        List.of(
            "with usual ranges of its inputs", band.map(RunRoutes::fullBand).orElse("no band")));
    figures.add(List.of("wax left", String.format(Locale.ROOT, "%.0f g", result.remainingWaxG())));
    figures.add(
        List.of(
            "heat that came back to pool and wick",
            String.format(Locale.ROOT, "%.1f %%", 100 * result.returnedShare())));
    figures.add(
        List.of("tunnelling", result.isTunnelling() ? "part of the surface stayed hard" : "no"));
    figures.add(
        List.of(
            "wall and base",
            run.besideWarm().isEmpty()
                ? "not shown: not calibrated on three tests of this vessel's family"
                : run.besideWarm()));
    if (!run.besideName().isEmpty()) {
      figures.add(List.of("beside " + run.besideName() + ", as tested", run.besideTold()));
    }
    figures.add(
        List.of(
            "error of the heat and wax balances",
            String.format(
                Locale.ROOT,
                "%.0e and %.0e",
                balance.energyErrorFraction(),
                balance.massErrorFraction())));
    return figures;
  }

  private static String fullBand(Band band) {
    String early =
        Double.isNaN(band.fullPoolLowH()) ? "not reached" : "after " + hours(band.fullPoolLowH());
    String late = Double.isNaN(band.fullPoolHighH()) ? "not reached" : hours(band.fullPoolHighH());
    return early.equals(late) ? early : early + " to " + late;
  }

  private static String radiusBand(Optional<Band> band, int at) {
    return band.filter(b -> at < b.hours().length)
        .map(
            b ->
                Plot.plain(2 * b.radiusLowMm()[at]) + " to " + Plot.plain(2 * b.radiusHighMm()[at]))
        .orElse("");
  }

  private static List<List<String>> rows(BurnResult result, Optional<Band> band) {
    List<List<String>> rows = new ArrayList<>();
    for (int at = 0; at < result.pool().size(); at++) {
      BurnResult.Pool pool = result.pool().get(at);
      rows.add(
          List.of(
              hours(pool.hours()),
              Plot.plain(pool.lengthMm()),
              Plot.plain(pool.widthMm()),
              radiusBand(band, at),
              Plot.plain(pool.depthMm()),
              Plot.plain(100 * pool.meltedSurface()),
              Plot.plain(pool.liquidG())));
    }
    return rows;
  }
}

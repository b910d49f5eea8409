package pourwright.page.casting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Piece;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.batch.RecordedStep;
import pourwright.cast.Defect;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.board.Lengths;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.Counted;
import pourwright.stock.Amount;
import pourwright.work.Act;
import pourwright.work.CastSheet;
import pourwright.work.CastWalk;
import pourwright.work.FinishCast;
import pourwright.work.Outcome;
import pourwright.work.Reading;
import pourwright.work.RecordStep;
import pourwright.work.Subject;

/** One cast, one step at a time, from the clean mold to what came out of it. */
final class CastDesk {
  private static final String TEMPLATE = "casting/cast.jte";
  private static final List<String> JUDGED = List.of("early", "right", "late");

  private final Desk desk;
  private final CastReader reader;
  private final Lengths numbers;
  private final WaitDesk waits;
  private final OwnDesk own;

  CastDesk(Desk desk) {
    this.desk = desk;
    this.waits = new WaitDesk(desk);
    this.own = new OwnDesk(desk);
    this.reader = new CastReader(desk);
    this.numbers = new Lengths(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/casting/{id}", http -> Show.page(http, TEMPLATE, page(http, Form.blank())));
    routes.post("/casting/{id}/step", this::step);
    routes.post("/casting/{id}/demold", this::demold);
    routes.post("/casting/{id}/room", http -> waits.room(http, batch(http), Form.of(http)));
  }

  private Batch batch(Context http) {
    String id = http.pathParam("id");
    Optional<Batch> found =
        id.matches("\\d{1,18}")
            ? desk.studio().look(books -> books.batches().batch(Long.parseLong(id)))
            : Optional.empty();
    return found
        .filter(b -> b.plan().kind() == BatchKind.CAST)
        .orElseThrow(
            () -> new TurnedAway(404, "There is no such cast", "Look at the casting bench."));
  }

  private CastPage page(Context http, Form form) {
    Batch batch = batch(http);
    return desk.studio().look(books -> reader.page(books, batch, form));
  }

  private void step(Context http) {
    Form form = Form.of(http);
    Batch batch = batch(http);
    Optional<PlannedStep> next = desk.studio().look(books -> CastReader.nextStep(books, batch));
    String back = "/casting/" + batch.id();
    if (next.isEmpty() || !next.get().key().equals(form.value("key"))) {
      Show.done(
          http, Said.note("This step was recorded already.", "The page shows the next one."), back);
      return;
    }
    List<RecordStep.Taken> taken = new ArrayList<>();
    List<Reading> readings = new ArrayList<>();
    weighed(form, batch, next.get(), taken, readings);
    own.read(form, batch, next.get(), readings);
    Optional<Double> celsius =
        form.readIfThere("step_c", "a temperature", t -> desk.units().celsius(t));
    Optional<Act> act = form.act(http, form.optionalText("note"));
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, TEMPLATE, page(http, form));
      return;
    }
    RecordStep.Request request =
        new RecordStep.Request(batch.id(), next.get().key(), taken, celsius.orElse(null));
    Outcome<RecordedStep> outcome = desk.studio().recordStep.run(act.get(), request);
    if (outcome instanceof Outcome.Refused<RecordedStep> refused) {
      Show.done(http, Said.refused(refused), back);
      return;
    }
    addSetTime(batch, next.get(), readings);
    if (!readings.isEmpty()) {
      desk.studio().recordReading.run(follow(act.get(), "r"), readings);
    }
    own.sumWater(act.get(), batch, next.get());
    String timer = startTimer(batch, next.get(), act.get());
    Show.done(http, Said.done("Recorded." + timer), back);
  }

  private static Act follow(Act act, String what) {
    return new Act(act.by(), act.requestKey() + "-" + what, "");
  }

  private void weighed(
      Form form,
      Batch batch,
      PlannedStep step,
      List<RecordStep.Taken> taken,
      List<Reading> readings) {
    for (PlannedAmount planned : step.amounts()) {
      String field = CastReader.field(planned.material());
      Optional<Double> grams = numbers.readGrams(form, field, "what was weighed");
      if (grams.isEmpty()) {
        continue;
      }
      if (planned.material().equals(CastSheet.WATER)) {
        readings.add(Reading.fresh(subject(batch), "water_g", grams.get(), desk.now()));
      } else if (grams.get() > 0) {
        Amount amount = Amount.ofGrams(grams.get());
        taken.add(new RecordStep.Taken(planned.material(), null, amount));
      }
    }
  }

  private static Subject subject(Batch batch) {
    return Subject.of(Subject.Kind.BATCH, batch.id());
  }

  /** Minutes from powder to stiffening: her own set time. */
  private void addSetTime(Batch batch, PlannedStep step, List<Reading> readings) {
    Instant powder = stepAt(batch, CastWalk.POWDER);
    if (step.key().equals(CastWalk.STIFF) && powder != null) {
      double minutes = Duration.between(powder, desk.now()).toSeconds() / 60.0;
      readings.add(Reading.fresh(subject(batch), "set_min", minutes, desk.now()));
    }
  }

  private @Nullable Instant stepAt(Batch batch, String key) {
    return desk.studio().look(books -> books.batches().steps(batch.id())).stream()
        .filter(s -> s.key().equals(key))
        .map(RecordedStep::at)
        .findFirst()
        .orElse(null);
  }

  private String startTimer(Batch batch, PlannedStep step, Act act) {
    if (!step.key().equals(CastWalk.COVER)) {
      return "";
    }
    double minutes =
        batch.plan().steps().stream()
            .filter(s -> s.key().equals("demold"))
            .mapToDouble(PlannedStep::minutes)
            .findFirst()
            .orElse(0);
    Duration wait = Duration.ofSeconds(Math.round(minutes * 60));
    String label = "Demold " + batch.mark().text();
    boolean set =
        desk.studio().timers.start(follow(act, "t"), label, subject(batch), wait).isDone();
    return set ? " A timer rings when it may be demolded." : "";
  }

  private void demold(Context http) {
    Form form = Form.of(http);
    Batch batch = batch(http);
    List<FinishCast.Demolded> whole = new ArrayList<>();
    for (BatchPlan.Makes makes : batch.plan().makes()) {
      form.count("whole_" + makes.design(), "how many came out whole", 0, makes.count())
          .ifPresent(n -> whole.add(new FinishCast.Demolded(makes.design(), n)));
    }
    Optional<String> judged = form.choice("judged", "how the moment was", JUDGED);
    List<Reading> readings = new ArrayList<>();
    List<String> onOne = form.values("on_one");
    for (Defect defect : Defect.values()) {
      form.readIfThere(defect.reading(), "how many pieces", Integer::valueOf)
          .or(() -> onOne.contains(defect.reading()) ? Optional.of(1) : Optional.empty())
          .filter(n -> n > 0)
          .ifPresent(
              n -> readings.add(Reading.fresh(subject(batch), defect.reading(), n, desk.now())));
    }
    Optional<Act> act = form.act(http, form.optionalText("note"));
    if (!form.ok() || judged.isEmpty() || act.isEmpty()) {
      Show.again(http, TEMPLATE, page(http, form));
      return;
    }
    Optional<Double> age = waits.ageH(batch);
    String tray = form.optionalText("tray");
    FinishCast.Request request =
        new FinishCast.Request(batch.id(), whole, tray.isEmpty() ? null : tray);
    Outcome<List<Piece>> outcome = desk.studio().finishCast.run(act.get(), request);
    if (outcome instanceof Outcome.Refused<List<Piece>> refused) {
      Show.done(http, Said.refused(refused), "/casting/" + batch.id());
      return;
    }
    waits.silence(act.get(), batch);
    addDemold(batch, judged.get(), age, readings);
    desk.studio().recordReading.run(follow(act.get(), "r"), readings);
    String marks =
        outcome.made().stream()
            .map(p -> p.mark().text())
            .reduce((a, b) -> a + ", " + b)
            .orElse("none");
    Show.done(
        http,
        Said.note(
            Counted.of(outcome.made().size(), "green vessel: ", "green vessels: ") + marks + ".",
            "Keep them damp until they are hard; hardening and drying are opposites."),
        "/casting/pieces/" + Bay.GREEN.state());
  }

  /** −1 too early, 0 right, 1 too late, with the hours since covering and the age at 20 °C. */
  private void addDemold(Batch batch, String judged, Optional<Double> age, List<Reading> readings) {
    double verdict = JUDGED.indexOf(judged) - 1.0;
    readings.add(Reading.fresh(subject(batch), "demold_judged_count", verdict, desk.now()));
    Instant covered = stepAt(batch, CastWalk.COVER);
    if (covered != null) {
      double hours = Duration.between(covered, desk.now()).toSeconds() / 3600.0;
      readings.add(Reading.fresh(subject(batch), "demold_h", hours, desk.now()));
    }
    age.ifPresent(h -> readings.add(Reading.fresh(subject(batch), "demold_age_h", h, desk.now())));
  }
}

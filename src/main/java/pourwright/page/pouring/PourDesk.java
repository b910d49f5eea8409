package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Piece;
import pourwright.batch.PieceStep;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.pour.Mishap;
import pourwright.pour.Top;
import pourwright.stock.Amount;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.Outcome;
import pourwright.work.PourWalk;
import pourwright.work.PourWatch;
import pourwright.work.ReadWax;
import pourwright.work.Reading;
import pourwright.work.RecordStep;
import pourwright.work.RecordStep.Taken;
import pourwright.work.Subject;
import pourwright.work.Timer;

/** One pour, one step at a time. */
final class PourDesk {
  private static final String TEMPLATE = "pouring/pour.jte";
  private final Desk desk;
  private final PourReader reader;

  PourDesk(Desk desk) {
    this.desk = desk;
    this.reader = new PourReader(desk);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/pouring/{id}", http -> Show.page(http, TEMPLATE, page(http, Form.blank())));
    routes.post("/pouring/{id}/reading", this::read);
    routes.post("/pouring/{id}/step", this::step);
    routes.post("/pouring/{id}/wait", this::waitFor);
    routes.post("/pouring/{id}/tap", this::tap);
    routes.post("/pouring/{id}/redose", this::redose);
    routes.post("/pouring/{id}/reheat", this::reheat);
    new LeftDesk(desk, this).addTo(routes);
    new FinishDesk(desk, this).addTo(routes);
    routes.post("/pouring/{id}/rested", this::rested);
  }

  static long id(Context http) {
    try {
      return Long.parseLong(http.pathParam("id"));
    } catch (NumberFormatException e) {
      throw new TurnedAway(404, "There is no such pour", "Look it up at the pouring bench.");
    }
  }

  PourWatch watch(Context http) {
    return desk.studio()
        .look(books -> PourWatch.of(books, id(http)))
        .orElseThrow(
            () -> new TurnedAway(404, "There is no such pour", "Look at the pouring bench."));
  }

  private PourPage page(Context http, Form form) {
    PourWatch watch = watch(http);
    return desk.studio().look(books -> reader.page(books, watch, form));
  }

  void again(Context http, Form form) {
    Show.again(http, TEMPLATE, page(http, form));
  }

  void back(Context http, Outcome<?> outcome, String done) {
    Said said =
        outcome instanceof Outcome.Refused<?> refused ? Said.refused(refused) : Said.done(done);
    Show.done(http, said, "/pouring/" + id(http));
  }

  private @Nullable Double celsius(Form form, String field, String what) {
    return form.readIfThere(field, what, text -> desk.units().celsius(text)).orElse(null);
  }

  private void read(Context http) {
    Form form = Form.of(http);
    Double wax = celsius(form, "wax_c", "the wax's temperature");
    Double room = celsius(form, "room_c", "the room's temperature");
    Optional<Act> act = form.act(http, "");
    if (wax == null) {
      form.complain("wax_c", "Please give the wax's temperature.");
    }
    if (!form.ok() || act.isEmpty() || wax == null) {
      again(http, form);
      return;
    }
    back(
        http,
        desk.studio().readWax.run(act.get(), new ReadWax.Request(id(http), wax, room)),
        "Read and the clock set.");
  }

  private void step(Context http) {
    Form form = Form.of(http);
    PourWatch watch = watch(http);
    PlannedStep next = watch.next();
    if (next == null || !next.key().equals(form.value("key"))) {
      Show.done(
          http,
          Said.note("This step was recorded already.", "The page shows the next one."),
          "/pouring/" + id(http));
      return;
    }
    List<Taken> taken = new ArrayList<>();
    for (PlannedAmount planned : next.amounts()) {
      taken(form, planned).ifPresent(taken::add);
    }
    Double c = celsius(form, "step_c", "the temperature");
    StepFacts facts = StepFacts.of(desk, form, watch, next, c);
    Optional<Act> act = form.act(http, form.optionalText("note"));
    if (!form.ok() || act.isEmpty()) {
      again(http, form);
      return;
    }
    Optional<Outcome.Refused<?>> refused = facts.write(act.get());
    if (refused.isPresent()) {
      back(http, refused.get(), "");
      return;
    }
    var outcome =
        desk.studio()
            .recordStep
            .run(act.get(), new RecordStep.Request(id(http), next.key(), taken, c));
    if (outcome.isDone()) {
      settleClock(http, act.get(), next.key());
    }
    back(http, outcome, "Recorded: " + next.key() + ".");
  }

  private Optional<Taken> taken(Form form, PlannedAmount planned) {
    String field = "amount-" + planned.material();
    if (planned.amount().usualUnit().equals("pcs")) {
      return form.count(field, "how many", 0, 100_000)
          .filter(n -> n > 0)
          .map(n -> new Taken(planned.material(), null, Amount.ofPieces(n)));
    }
    return form.read(field, "what was weighed", t -> desk.units().readMass(t))
        .filter(pourwright.quantity.Mass::isPositive)
        .map(m -> new Taken(planned.material(), null, Amount.of(m)));
  }

  /** Scent in or wax poured: the clock that waited for it is answered. */
  private void settleClock(Context http, Act act, String key) {
    if (!Set.of(PourWalk.SCENT, PourWalk.POUR, PourWalk.SECOND).contains(key)) {
      return;
    }
    Subject subject = Subject.of(Subject.Kind.BATCH, id(http));
    List<Timer> waiting =
        desk.studio().look(books -> books.timers().of(subject)).stream()
            .filter(t -> t.answeredAt() == null)
            .toList();
    for (Timer timer : waiting) {
      Act each = Act.of(act.by(), act.requestKey() + "-timer-" + timer.id());
      desk.studio().timers.answer(each, timer.id());
    }
  }

  private void waitFor(Context http) {
    Form form = Form.of(http);
    Optional<Integer> minutes = form.count("minutes", "minutes", 1, 10_000);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty() || minutes.isEmpty()) {
      again(http, form);
      return;
    }
    PourWatch watch = watch(http);
    PlannedStep next = watch.next();
    String label = (next == null ? "Pour" : next.sentence()) + " " + watch.batch().mark().text();
    back(
        http,
        desk.studio()
            .timers
            .start(
                act.get(),
                label,
                Subject.of(Subject.Kind.BATCH, id(http)),
                Duration.ofMinutes(minutes.get())),
        "The timer runs.");
  }

  private void tap(Context http) {
    Form form = Form.of(http);
    String key = form.value("tap");
    for (Top top : Top.values()) {
      if (top.key().equals(key)) {
        top(http, form, top);
        return;
      }
    }
    for (Mishap mishap : Mishap.values()) {
      if (mishap.key().equals(key)) {
        mishap(http, form, mishap);
        return;
      }
    }
    Show.done(http, Said.refused("There is no such button.", ""), "/pouring/" + id(http));
  }

  /** How many candles came out so; all of the pour unless she says fewer. */
  private void top(Context http, Form form, Top top) {
    int pieces = watch(http).batch().plan().pieces();
    Optional<Integer> count =
        form.value("top_count").isBlank()
            ? Optional.of(pieces)
            : form.count("top_count", "how many candles", 1, 500);
    Optional<Act> act = form.act(http, top.words());
    if (!form.ok() || act.isEmpty() || count.isEmpty()) {
      again(http, form);
      return;
    }
    Subject subject = Subject.of(Subject.Kind.BATCH, id(http));
    Reading reading = Reading.fresh(subject, top.reading(), count.get(), desk.now());
    said(
        http,
        desk.studio().recordReading.run(act.get(), List.of(reading)),
        "Recorded: " + top.words() + ", " + count.get() + " of " + pieces + ".",
        top.remedy());
  }

  private void mishap(Context http, Form form, Mishap mishap) {
    Optional<Act> act = form.act(http, mishap.words());
    if (act.isEmpty()) {
      again(http, form);
      return;
    }
    said(
        http,
        desk.studio()
            .recordStep
            .run(act.get(), new RecordStep.Request(id(http), "mishap", List.of(), null)),
        "Recorded: " + mishap.words() + ".",
        mishap.remedy());
  }

  private void said(Context http, Outcome<?> outcome, String headline, String remedy) {
    Said said =
        outcome instanceof Outcome.Refused<?> refused
            ? Said.refused(refused)
            : Said.note(headline, remedy);
    Show.done(http, said, "/pouring/" + id(http));
  }

  private void redose(Context http) {
    Form form = Form.of(http);
    var mass = form.read("grams", "what was added", t -> desk.units().readMass(t));
    Optional<Act> act = form.act(http, "load put right");
    if (!form.ok() || act.isEmpty() || mass.isEmpty()) {
      again(http, form);
      return;
    }
    Taken taken = new Taken(form.value("material"), null, Amount.of(mass.get()));
    back(
        http,
        desk.studio()
            .recordStep
            .run(act.get(), new RecordStep.Request(id(http), "redose", List.of(taken), null)),
        "Added. Stir for two minutes.");
  }

  private void reheat(Context http) {
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, form.optionalText("reheat_reason"));
    if (act.isEmpty()) {
      again(http, form);
      return;
    }
    back(
        http,
        desk.studio().reheat.run(act.get(), id(http)),
        "Counted. Read the wax again: the clock begins anew.");
  }

  private void rested(Context http) {
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      again(http, form);
      return;
    }
    List<Long> resting =
        desk.studio().look(books -> PourReader.resting(books, id(http))).stream()
            .map(Piece::id)
            .toList();
    if (resting.isEmpty()) {
      Show.done(
          http, Said.note("Nothing of this pour rests any more.", ""), "/pouring/" + id(http));
      return;
    }
    back(
        http,
        desk.studio()
            .advancePieces
            .run(act.get(), AdvancePieces.Request.of(resting, PieceStep.RESTED)),
        "Rested: they may be tested, and sold once the design is proved for sale.");
  }
}

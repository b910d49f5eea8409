package pourwright.page.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pourwright.burn.CycleKind;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.plan.NextBurn;
import pourwright.quantity.Counted;
import pourwright.work.Act;
import pourwright.work.BurnTest;
import pourwright.work.Outcome;
import pourwright.work.Reading;
import pourwright.work.Subject;
import pourwright.work.TestedFacts;

/** Lighting a sample: what has to be true before, what is measured before, and its bells. */
final class LightRoutes {
  /** House: so many candles lit at once for one person who watches. */

  /** House: a candle is lit again when its base is so near to the room. */
  private static final double BASE_NEAR_K = 2;

  private static final String ROOM = "room_c";
  private static final List<String> BEFORE =
      List.of("tray", "extinguisher", "alarm", "trimmed", "stays");

  private final Desk desk;
  private final TestViews views;

  LightRoutes(Desk desk, TestViews views) {
    this.desk = desk;
    this.views = views;
  }

  void addTo(RoutesConfig routes) {
    routes.post("/shelf/test/{id}/light/{sample}", this::light);
  }

  private void light(Context http) {
    long id = ShelfPlace.number(http.pathParam("id"));
    long sample = ShelfPlace.number(http.pathParam("sample"));
    Form form = Form.of(http);
    CycleKind kind = kind(form, sample);
    for (String box : BEFORE) {
      boolean asked = !box.equals("trimmed") || kind != CycleKind.UNTRIMMED;
      if (asked && !form.ticked(box)) {
        form.complain(box + "-" + sample, "Before lighting, every line has to be true.");
      }
    }
    String who = form.text("stays-" + sample, "who stays in the room");
    int lit = desk.studio().look(books -> books.burns().burning().size());
    if (lit >= NextBurn.LIT_MOST) {
      form.complain(
          "tray-" + sample,
          Counted.of(lit, "candle burns", "candles burn")
              + "; at most "
              + NextBurn.LIT_MOST
              + " (house).");
    }
    Optional<Double> mass =
        form.read("mass-" + sample, "its mass after the trim", t -> number(t, 1, 100_000));
    Optional<Double> trim =
        kind == CycleKind.UNTRIMMED
            ? Optional.empty()
            : form.read("trim-" + sample, "the wick's length", t -> number(t, 1, 60));
    Optional<Double> base = Optional.empty();
    Optional<Double> room = Optional.empty();
    if (!desk.studio().look(books -> books.burns().cycles(sample)).isEmpty()) {
      base = form.read("base-" + sample, "the base's temperature", t -> number(t, -20, 200));
      room = form.read("room-" + sample, "the room's temperature", t -> number(t, -20, 60));
      cold(form, sample, base, room);
    }
    Optional<Act> act = form.act(http, who + " stays in the room");
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, "shelf/test.jte", views.test(id, form).orElseThrow(NotFoundResponse::new));
      return;
    }
    Outcome<BurnTest.Cycle> outcome =
        desk.studio()
            .burnTests
            .light(
                act.get(),
                id,
                sample,
                kind,
                BurnTest.Look.beforeLighting(mass.orElse(null), base.orElse(null)));
    if (outcome instanceof Outcome.Refused<BurnTest.Cycle> refused) {
      Show.done(http, Said.refused(refused), "/shelf/test/" + id);
      return;
    }
    trim.ifPresent(mm -> read(act.get(), id, TestedFacts.TRIM, mm));
    room.ifPresent(c -> read(act.get(), id, ROOM, c));
    setBells(act.get(), id, outcome.made(), kind);
    Show.done(
        http,
        Said.done(
            "Lit. The bell calls every hour, the last time after "
                + last(kind) / 60
                + " h: then put it out. Never leave it alone."),
        "/shelf/cycle/" + outcome.made().id());
  }

  private static void cold(Form form, long sample, Optional<Double> base, Optional<Double> room) {
    if (base.isPresent() && room.isPresent()) {
      double over = base.get() - room.get();
      if (over > BASE_NEAR_K) {
        form.complain(
            "base-" + sample,
            String.format(
                Locale.ROOT,
                "Its base is %.1f K warmer than the room: wait until it is within 2 K (house).",
                over));
      }
    }
  }

  private static Double number(String text, double least, double most) {
    double value = Double.parseDouble(text.replace(',', '.'));
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException("from " + least + " to " + most);
    }
    return value;
  }

  private void read(Act act, long test, String quantity, double value) {
    Act own = new Act(act.by(), act.requestKey() + "-" + quantity, "");
    desk.studio()
        .recordReading
        .run(
            own,
            List.of(
                Reading.fresh(
                    Subject.of(Subject.Kind.BURN_TEST, test), quantity, value, desk.now())));
  }

  private static int last(CycleKind kind) {
    return kind.bellsMin().get(kind.bellsMin().size() - 1);
  }

  private static CycleKind kind(Form form, long sample) {
    for (CycleKind kind : CycleKind.values()) {
      if (kind.name().equals(form.value("kind-" + sample))) {
        return kind;
      }
    }
    return CycleKind.USUAL;
  }

  private void setBells(Act act, long test, BurnTest.Cycle cycle, CycleKind kind) {
    for (int minutes : kind.bellsMin()) {
      Act own = new Act(act.by(), act.requestKey() + "-" + minutes, "");
      String label = "Test " + test + ", cycle " + cycle.number() + ": read at " + minutes + " min";
      desk.studio()
          .timers
          .start(
              own,
              minutes == last(kind) ? label + " and put out" : label,
              Subject.of(Subject.Kind.BURN_TEST, test),
              Duration.ofMinutes(minutes));
    }
  }
}

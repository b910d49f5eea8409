package pourwright.page.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.burn.LiveLimit;
import pourwright.burn.TestSample;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.work.Act;
import pourwright.work.BurnTest;
import pourwright.work.Outcome;

/** A candle that burns: readings, what they ask for, and putting it out. */
final class BurningRoutes {
  private static final String PLAIN_END = "end of its cycle";
  private final Desk desk;
  private final TestViews views;

  BurningRoutes(Desk desk, TestViews views) {
    this.desk = desk;
    this.views = views;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/shelf/cycle/{id}", this::show);
    routes.post("/shelf/cycle/{id}/look", this::look);
    routes.post("/shelf/cycle/{id}/out", this::out);
  }

  private void show(Context http) {
    long id = ShelfPlace.number(http.pathParam("id"));
    Show.page(
        http, "shelf/cycle.jte", views.cycle(id, Form.blank()).orElseThrow(NotFoundResponse::new));
  }

  private void look(Context http) {
    long id = ShelfPlace.number(http.pathParam("id"));
    Form form = Form.of(http);
    BurnTest.Look look = read(form, id);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, "shelf/cycle.jte", views.cycle(id, form).orElseThrow(NotFoundResponse::new));
      return;
    }
    Outcome<BurnTest.Seen> outcome = desk.studio().burnTests.look(act.get(), id, look);
    Show.done(http, said(outcome, look), "/shelf/cycle/" + id);
  }

  private static Said said(Outcome<BurnTest.Seen> outcome, BurnTest.Look look) {
    if (outcome instanceof Outcome.Refused<BurnTest.Seen> refused) {
      return Said.refused(refused);
    }
    LiveLimit.Call call = LiveLimit.of(TestReader.reading(look));
    return switch (call.limit()) {
      case STOP -> Said.refused("Recorded. STOP: put it out now.", call.sentence() + ".");
      case WATCH -> Said.warning("Recorded. Keep watching.", call.sentence() + ".");
      case CALM -> Said.done("Recorded.");
    };
  }

  private BurnTest.Look read(Form form, long cycle) {
    long now =
        desk.studio().look(books -> books.burns().cycle(cycle)).map(views::minutes).orElse(0L);
    Double minute = number(form, "minute", 20_000);
    return new BurnTest.Look(
        minute == null ? now : minute,
        number(form, "mass_g", 100_000),
        number(form, "flame_height_mm", 1000),
        number(form, "pool_length_mm", 1000),
        number(form, "pool_width_mm", 1000),
        number(form, "pool_depth_mm", 1000),
        number(form, "wall_c", 500),
        number(form, "base_c", 500),
        grade(form, "soot"),
        grade(form, "mushroom"),
        elseBurns(form),
        number(form, "after_smoke_s", 10_000),
        seen(form, "crack"),
        seen(form, "seep"),
        seen(form, "smoke"),
        note(form));
  }

  /** Ticked without a time: a second, so that it counts at once. */
  private static @Nullable Double elseBurns(Form form) {
    Double seconds = number(form, "secondary_ignition_s", 10_000);
    return seconds == null && form.ticked("else_burns") ? Double.valueOf(1) : seconds;
  }

  /** What is seen and has no column of its own stands in the note. */
  private static String note(Form form) {
    List<String> notes = new ArrayList<>();
    if (form.ticked("tunnel")) {
      notes.add("tunnel");
    }
    if (form.ticked("drift")) {
      notes.add("wick drift");
    }
    String own = form.optionalText("note");
    if (!own.isEmpty()) {
      notes.add(own);
    }
    return String.join(", ", notes);
  }

  private static @Nullable Double number(Form form, String field, double most) {
    Optional<Double> value =
        form.readIfThere(field, "a number", text -> Double.valueOf(text.replace(',', '.')));
    if (value.isPresent() && !(value.get() >= -50 && value.get() <= most)) {
      form.complain(field, "Please give a number up to " + (long) most + ".");
    }
    return value.orElse(null);
  }

  private static @Nullable String grade(Form form, String field) {
    String text = form.optionalText(field);
    return text.isEmpty() ? null : text;
  }

  private static @Nullable Boolean seen(Form form, String field) {
    return form.ticked(field) ? Boolean.TRUE : null;
  }

  private void out(Context http) {
    long id = ShelfPlace.number(http.pathParam("id"));
    Form form = Form.of(http);
    List<String> ways = new ArrayList<>(List.of(PLAIN_END));
    for (TestSample.End end : TestSample.End.values()) {
      ways.add(end.word());
    }
    Optional<String> how = form.choice("how", "how it ended", ways);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty() || how.isEmpty()) {
      Show.again(http, "shelf/cycle.jte", views.cycle(id, form).orElseThrow(NotFoundResponse::new));
      return;
    }
    Outcome<BurnTest.Cycle> outcome = desk.studio().burnTests.putOut(act.get(), id, how.get());
    Said said =
        outcome instanceof Outcome.Refused<BurnTest.Cycle> refused
            ? Said.refused(refused)
            : Said.done("Out. It rests 4 hours before it is lit again (house).");
    long test = desk.studio().look(books -> books.burns().testOfCycle(id));
    Show.done(http, said, "/shelf/test/" + test);
  }
}

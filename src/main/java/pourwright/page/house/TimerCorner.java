package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.work.Act;
import pourwright.work.Outcome;
import pourwright.work.Subject;
import pourwright.work.Timer;

/** Sets a timer, tries the bell, answers one. */
public final class TimerCorner implements Corner {
  private static final int MINUTES_MAX = 14 * 24 * 60;
  private final Desk desk;

  /** Timers of this studio. */
  public TimerCorner(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param form what was typed
   * @param running one line for each timer
   */
  public record TimersPage(Form form, List<String> running) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/timers", http -> Show.page(http, "house/timers.jte", page(Form.blank())));
    routes.post("/timers", this::start);
    routes.post("/timers/test", this::test);
    routes.post("/bells/{id}/answer", this::answer);
  }

  private TimersPage page(Form form) {
    List<Timer> running = desk.studio().look(books -> books.timers().running());
    return new TimersPage(
        form,
        running.stream()
            .map(t -> t.label() + ", " + desk.dayAndTime(t.dueAt()) + ", set by " + t.by())
            .toList());
  }

  private void start(Context http) {
    Form form = Form.of(http);
    String label = form.text("label", "what the timer is for");
    Optional<Integer> minutes = form.count("minutes", "a number of minutes", 1, MINUTES_MAX);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty() || minutes.isEmpty()) {
      Show.again(http, "house/timers.jte", page(form));
      return;
    }
    show(http, start(act.get(), label, Duration.ofMinutes(minutes.get())));
  }

  private void test(Context http) {
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.again(http, "house/timers.jte", page(form));
      return;
    }
    show(http, start(act.get(), "Bell test", Duration.ofSeconds(3)));
  }

  private Outcome<Timer> start(Act act, String label, Duration after) {
    return desk.studio()
        .timers
        .start(act, label, new Subject(Subject.Kind.STUDIO, "studio"), after);
  }

  private void show(Context http, Outcome<Timer> outcome) {
    if (outcome instanceof Outcome.Refused<Timer> refused) {
      Show.done(http, Said.refused(refused), "/timers");
    } else {
      Timer timer = outcome.made();
      Show.done(
          http,
          Said.done(timer.label() + " rings at " + desk.clockTime(timer.dueAt()) + "."),
          "/timers");
    }
  }

  private void answer(Context http) {
    Form form = Form.of(http);
    String id = http.pathParam("id");
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.who(http, form);
      return;
    }
    Outcome<Timer> outcome = desk.studio().timers.answer(act.get(), Numbers.of(id));
    Said said =
        outcome instanceof Outcome.Refused<Timer> refused
            ? Said.refused(refused)
            : Said.done("Answered: " + outcome.made().label() + ".");
    Show.done(http, said, Numbers.ownPath(form.value("back")));
  }
}

package pourwright.page.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.now.WorkAhead;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanChecker;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;
import pourwright.plan.Rearrange;
import pourwright.plan.Window;
import pourwright.work.Act;
import pourwright.work.Outcome;
import pourwright.work.PaperPrinter;
import pourwright.work.PlanCalendar;
import pourwright.work.PlanRun;
import pourwright.work.PlanText;
import pourwright.work.Replan;
import pourwright.work.WorkPlan;

/** The plan as a time line, planning again with a look before it is taken, and the calendar. */
public final class PlanCorner implements Corner {
  /** How long a planning may take before the best so far is shown; house. */
  public static final Duration LIMIT = Duration.ofSeconds(10);

  private static final int WEEKS_MIN = 21 * 1440;
  private static final String AGAIN = "plan/again.jte";

  private final Desk desk;
  private final Replan replan;
  private final Planner planner;
  private final Duration limit;
  private final PlanWords words;
  private final ClassReader classes;
  private final WorkAhead ahead;
  private final AtomicReference<@Nullable PlanJob> job = new AtomicReference<>();

  /** The plan of this studio, made by this planner within this time. */
  public PlanCorner(Desk desk, Planner planner, Duration limit) {
    this(desk, new WorkAhead(desk), planner, limit);
  }

  /** As above; before a plan was taken it tells this one. */
  public PlanCorner(Desk desk, WorkAhead ahead, Planner planner, Duration limit) {
    this.limit = limit;
    this.desk = desk;
    this.replan = new Replan(desk.studio());
    this.planner = planner;
    this.words = new PlanWords(desk.locale());
    this.classes = new ClassReader(desk);
    this.ahead = ahead;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/plan", this::show);
    routes.get("/plan.ics", this::calendar);
    routes.get("/plan/again", http -> Show.page(http, AGAIN, again(Form.blank())));
    routes.post("/plan/again", this::begin);
    routes.post("/plan/stop", this::stop);
    routes.post("/plan/take", this::take);
    routes.post("/plan/move", this::takeMoved);
    new HabitsDesk(desk).addTo(routes);
    new ClassDesk(desk, PaperPrinter.ofTheHouse()).addTo(routes);
  }

  private void show(Context http) {
    Optional<PlanText.Kept> kept = replan.standing();
    if (kept.isPresent()) {
      show(http, kept.get(), true, "", move(kept.get(), http));
      return;
    }
    WorkAhead.Made quick = ahead.get();
    WorkPlan work = quick.plan();
    Plan plan = work == null ? null : work.plan();
    if (work == null || plan == null) {
      String why = work == null ? quick.trouble() : String.join("; ", work.reasons());
      Show.page(
          http,
          "plan/plan.jte",
          new PlanPage(
              false,
              false,
              why,
              "",
              "",
              List.of(),
              PlanPage.Why.NOTHING,
              PlanPage.Move.none(),
              classes.rows()));
      return;
    }
    PlanText.Kept now = new PlanText.Kept(work.problem(), plan);
    show(http, now, false, quick.by(), PlanPage.Move.none());
  }

  private void show(
      Context http, PlanText.Kept kept, boolean taken, String by, PlanPage.Move move) {
    PlanProblem problem = kept.problem();
    Plan plan = kept.plan();
    int now = Math.max(0, problem.minuteOf(desk.now()));
    int midnight = problem.minuteOf(desk.today().atStartOfDay(desk.zone()).toInstant());
    Window day = new Window(midnight + 6 * 60, midnight + 22 * 60);
    Window weeks = new Window(midnight, midnight + WEEKS_MIN);
    Show.page(
        http,
        "plan/plan.jte",
        new PlanPage(
            true,
            taken,
            by,
            TimeLine.of(problem, plan, day, desk.locale()),
            TimeLine.of(problem, plan, weeks, desk.locale()),
            words.days(problem, plan, now),
            why(problem, plan, http.queryParam("why")),
            move,
            classes.rows()));
  }

  /** The step that is asked about, and what it breaks at the day and time that were typed. */
  private PlanPage.Move move(PlanText.Kept kept, Context http) {
    String step = Optional.ofNullable(http.queryParam("why")).orElse("");
    Placed placed = kept.plan().byStep().get(step);
    if (placed == null) {
      return PlanPage.Move.none();
    }
    if (http.queryParam("day") == null) {
      ZonedDateTime at = kept.problem().clock(placed.startMin());
      Map<String, String> there =
          Map.of(
              "day", "" + at.toLocalDate(),
              "time", "" + at.toLocalTime().truncatedTo(ChronoUnit.MINUTES));
      return new PlanPage.Move(step, Form.startingFrom(there), false, List.of());
    }
    Form form = Form.asked(http);
    Optional<Rearrange.Moved> moved = moved(kept, step, form);
    return new PlanPage.Move(
        step, form, moved.isPresent(), moved.map(PlanCorner::sentences).orElse(List.of()));
  }

  private static List<String> sentences(Rearrange.Moved moved) {
    return moved.breaks().stream().map(PlanChecker.Finding::sentence).distinct().toList();
  }

  private Optional<Rearrange.Moved> moved(PlanText.Kept kept, String step, Form form) {
    Optional<LocalDate> day = form.read("day", "a day", PlanCorner::day);
    Optional<LocalTime> time = form.read("time", "a time", PlanCorner::time);
    if (day.isEmpty() || time.isEmpty() || !kept.plan().byStep().containsKey(step)) {
      return Optional.empty();
    }
    int minute =
        kept.problem().minuteOf(day.get().atTime(time.get()).atZone(desk.zone()).toInstant());
    if (minute < 0 || minute > kept.problem().horizonMin()) {
      form.complain("day", "the plan does not reach to this day; give one within it");
      return Optional.empty();
    }
    return Optional.of(Rearrange.move(kept.problem(), kept.plan(), step, minute));
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private static LocalTime time(String text) {
    try {
      return LocalTime.parse(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(e);
    }
  }

  /** Takes the plan with one step moved, where that breaks nothing. */
  private void takeMoved(Context http) {
    Form form = Form.of(http);
    String step = form.value("step");
    Optional<PlanText.Kept> kept = replan.standing();
    Optional<Act> act = form.act(http, "moved a step of the plan by hand");
    Optional<Rearrange.Moved> moved = kept.flatMap(k -> moved(k, step, form));
    String back = "/plan?why=" + URLEncoder.encode(step, StandardCharsets.UTF_8);
    if (act.isEmpty() || kept.isEmpty() || moved.isEmpty()) {
      String why = form.complaints().isEmpty() ? "" : form.complaints().get(0);
      Show.done(http, Said.refused("It was not moved.", why), back);
      return;
    }
    List<String> breaks = sentences(moved.get());
    if (!breaks.isEmpty()) {
      Show.done(http, Said.refused("It was not moved.", String.join(" ", breaks)), back);
      return;
    }
    Outcome<PlanRun> outcome =
        replan.takeByHand(act.get(), kept.get().problem(), moved.get().plan());
    if (outcome instanceof Outcome.Refused<PlanRun> refused) {
      Show.done(http, Said.refused(refused), back);
      return;
    }
    Show.done(http, Said.done("The step is moved."), back);
  }

  private static PlanPage.Why why(PlanProblem problem, Plan plan, @Nullable String key) {
    if (key == null || !plan.byStep().containsKey(key)) {
      return PlanPage.Why.NOTHING;
    }
    return new PlanPage.Why(
        problem.stepsByKey().containsKey(key) ? problem.stepsByKey().get(key).words() : key,
        Rearrange.why(problem, plan, key));
  }

  private void calendar(Context http) {
    Optional<PlanText.Kept> kept = replan.standing();
    if (kept.isEmpty()) {
      http.status(404).result("No plan stands yet.");
      return;
    }
    String text =
        PlanCalendar.of(kept.get().problem(), kept.get().plan(), "Pourwright plan", desk.now());
    Show.file(
        http, text.getBytes(StandardCharsets.UTF_8), "text/calendar; charset=utf-8", "plan.ics");
  }

  private void begin(Context http) {
    PlanJob running = job.get();
    if (running == null || running.isDone()) {
      job.set(PlanJob.begin(replan, planner, desk.now(), desk.zone(), limit));
    }
    http.redirect("/plan/again", io.javalin.http.HttpStatus.SEE_OTHER);
  }

  private void stop(Context http) {
    PlanJob running = job.get();
    if (running != null) {
      running.stop();
    }
    http.redirect("/plan/again", io.javalin.http.HttpStatus.SEE_OTHER);
  }

  private AgainPage again(Form form) {
    PlanJob running = job.get();
    if (running == null) {
      return page(form, "none", "", "Nothing is being planned.", List.of());
    }
    String since = desk.clockTime(running.begun());
    Replan.Preview preview = running.preview();
    if (!running.trouble().isEmpty()) {
      return page(
          form, "impossible", since, "It could not be planned.", List.of(running.trouble()));
    }
    if (preview == null) {
      return page(form, "running", since, progress(running), List.of());
    }
    if (!(preview.fresh().outcome() instanceof Planner.Planned planned)) {
      return page(
          form, "impossible", since, "No plan keeps every rule.", preview.fresh().reasons());
    }
    return preview(form, since, preview, planned);
  }

  private static String progress(PlanJob running) {
    long late = running.lateMin();
    String best =
        late < 0
            ? ""
            : late == 0
                ? " The best so far keeps every date."
                : " The best so far is " + PlanWords.length(late) + " late, all orders together.";
    return "Plans found so far: " + running.found() + "." + best;
  }

  private static AgainPage page(
      Form form, String state, String since, String sentence, List<String> reasons) {
    return new AgainPage(form, state, since, sentence, List.of(), List.of(), reasons, "");
  }

  private AgainPage preview(
      Form form, String since, Replan.Preview preview, Planner.Planned planned) {
    PlanProblem problem = preview.fresh().problem();
    String sentence =
        preview.before() == null
            ? "There was no plan before."
            : preview.changes().isEmpty()
                ? "Nothing moves."
                : "Steps that would move: " + preview.changes().size() + ".";
    return new AgainPage(
        form,
        "done",
        since,
        sentence,
        PlanWords.aims(planned),
        words.moved(problem, preview.changes()),
        List.of(),
        TimeLine.of(problem, planned.plan(), new Window(0, WEEKS_MIN), desk.locale()));
  }

  private void take(Context http) {
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, "took a plan");
    PlanJob done = job.get();
    Replan.Preview preview = done == null ? null : done.preview();
    if (act.isEmpty()) {
      Show.again(http, AGAIN, again(form));
      return;
    }
    if (preview == null) {
      Show.done(
          http,
          Said.refused("There is no plan to take.", "Plan again, look at it, then take it."),
          "/plan/again");
      return;
    }
    Outcome<PlanRun> outcome = replan.take(act.get(), preview);
    if (outcome instanceof Outcome.Refused<PlanRun> refused) {
      Show.done(http, Said.refused(refused), "/plan/again");
      return;
    }
    job.compareAndSet(done, null);
    Show.done(http, Said.done("The plan is taken."), "/plan");
  }
}

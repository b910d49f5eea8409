package pourwright.work;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import pourwright.order.OrderLine;
import pourwright.plan.ForwardRule;
import pourwright.plan.Goal;
import pourwright.plan.LastDay;
import pourwright.plan.Link;
import pourwright.plan.MakePlan;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;
import pourwright.plan.Promise;
import pourwright.plan.Promising;
import pourwright.plan.Step;

/**
 * A wish for so many of a candle, beside all that is open: when it can leave, what it waits for.
 *
 * @param work everything open and the wish, by the forward rule
 * @param problem the same steps, with one goal for the whole wish
 * @param notProved why the candle is not proved for sale; empty when it is, and only then may a
 *     date be promised
 * @param missing what her rule still asks for before it may be called proved
 * @param way the whole way of one such order on an empty floor
 * @param lastDay the last day to cast for the parcel day, where one was said and there is such a
 *     day
 * @param parcelDay the day it should leave, if one was said
 */
public record Wish(
    WorkPlan work,
    PlanProblem problem,
    List<String> notProved,
    List<String> missing,
    List<LastDay.Leg> way,
    @Nullable LocalDate lastDay,
    @Nullable LocalDate parcelDay) {
  /** Key of the goal that is the wish. */
  public static final String GOAL = "this wish";

  private static final int LINES_MAX = 60;

  /** Copies. */
  public Wish {
    notProved = List.copyOf(notProved);
    missing = List.copyOf(missing);
    way = List.copyOf(way);
  }

  /**
   * Lays a wish beside the open order lines, the earliest sixty of them.
   *
   * @throws pourwright.quantity.OutOfRange when a card or a mold is missing
   */
  public static Wish of(
      Books books,
      List<OrderLine> open,
      String candle,
      int count,
      @Nullable LocalDate parcelDay,
      Instant now,
      ZoneId zone) {
    OrderLine wish = new OrderLine(GOAL, candle, 1, count, parcelDay, null);
    List<OrderLine> lines = new ArrayList<>(open.subList(0, Math.min(LINES_MAX, open.size())));
    lines.add(wish);
    WorkPlan work = WorkPlan.of(books, lines, now, zone, new ForwardRule());
    Optional<LocalDate> last =
        parcelDay == null
            ? Optional.empty()
            : LastDay.toCast(wish, work.book(), work.habits(), work.floor());
    List<String> notProved = notProved(books, work, candle);
    return new Wish(
        work,
        oneGoal(work),
        notProved,
        notProved.isEmpty() ? List.of() : missing(books, candle),
        LastDay.way(wish, work.book(), work.habits(), work.floor()),
        last.orElse(null),
        parcelDay);
  }

  /** A word that waits for a check burn is none for what is still to be poured. */
  private static List<String> notProved(Books books, WorkPlan work, String candle) {
    List<String> not =
        new ArrayList<>(
            CandleCards.now(books, candle)
                .map(cards -> new ProvedCandle(books, work.book().materials()).against(cards))
                .orElse(List.of("a card of it is missing")));
    if (!served(work).pours().isEmpty()) {
      new Proving(books).overdue(candle).ifPresent(not::add);
    }
    return not;
  }

  private static List<String> missing(Books books, String candle) {
    return books
        .cards()
        .current(Drawers.CANDLE, candle)
        .map(card -> new Proving(books).missing(candle, card.version()))
        .orElse(List.of());
  }

  /** True when a date may be promised: only what is proved for sale counts. */
  public boolean mayBePromised() {
    return notProved.isEmpty();
  }

  /** True when all of it stands on the shelf. */
  public boolean onTheShelf() {
    return served().pours().isEmpty();
  }

  private MakePlan.Served served() {
    return served(work);
  }

  private static MakePlan.Served served(WorkPlan work) {
    return work.make().served().stream()
        .filter(s -> s.line().order().equals(GOAL))
        .findFirst()
        .orElseThrow();
  }

  /** The minute at which the forward rule ends the making; -1 when it finds no plan. */
  public int quickEndMin() {
    Plan plan = work.plan();
    if (plan == null) {
      return -1;
    }
    Set<String> pours = Set.copyOf(served().pours());
    return plan.placed().stream()
        .filter(p -> pours.contains(p.step().substring(0, Math.max(0, p.step().indexOf('/')))))
        .mapToInt(pourwright.plan.Placed::endMin)
        .max()
        .orElse(0);
  }

  /** The problem with the wish's pours brought to one end: all of it is ready. */
  private static PlanProblem oneGoal(WorkPlan work) {
    PlanProblem problem = work.problem();
    Set<String> pours = Set.copyOf(served(work).pours());
    List<Step> steps = new ArrayList<>(problem.steps());
    List<Link> links = new ArrayList<>(problem.links());
    Step ready = Step.wait("wish", "ready", "All of the wish is ready", 0);
    List<Goal> goals = new ArrayList<>();
    for (Goal goal : problem.goals()) {
      if (goal.key().startsWith(GOAL + " ")) {
        links.add(new Link(goal.lastStep(), ready.key(), 0, null, "all of it leaves together"));
      } else {
        goals.add(goal);
      }
    }
    if (!pours.isEmpty()) {
      steps.add(ready);
      goals.add(new Goal(GOAL, "The wish", ready.key(), problem.horizonMin(), 1));
    }
    return new PlanProblem(
        problem.origin(),
        problem.zone(),
        problem.horizonMin(),
        problem.resources(),
        steps,
        links,
        problem.spans(),
        goals,
        problem.apart(),
        problem.washings(),
        problem.lastHotStartMin());
  }

  /** The earliest date that holds while every other date is kept, or no later than by the rule. */
  public Promise earliest(Promising promising, Planner.Effort effort) {
    if (!(new ForwardRule().plan(problem, effort) instanceof Planner.Planned quick)) {
      return new Promise.None(work.reasons());
    }
    Planner.Effort near =
        new Planner.Effort(
            effort.limit(),
            effort.seed(),
            effort.workers(),
            quick.plan(),
            effort.better(),
            effort.cancelled());
    return promising.earliest(problem, GOAL, quick.plan(), near);
  }

  /** Materials that are short for what is open and the wish, by name. */
  public List<String> shortOf() {
    return work.make().shortages().keySet().stream()
        .map(code -> work.book().materials().get(code).name())
        .collect(Collectors.toList());
  }
}

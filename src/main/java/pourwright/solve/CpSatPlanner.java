package pourwright.solve;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import pourwright.plan.ForwardSearch;
import pourwright.plan.Gathered;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanChecker;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;
import pourwright.plan.TouchCount;

/**
 * The optimal planner. Aims in order of rank: promised dates; when there is a plan to keep to, few
 * changes to it; few and short days; early. Each aim is searched with what the earlier ones reached
 * as a rule, and starts from the best plan so far. A quicker planner gives the first plan, so that
 * there is one at once and none is worse.
 */
public final class CpSatPlanner implements Planner {
  /** Orders that the first plan is sought among, where the time is long enough. */
  private static final int ORDERS_TRIED = 3000;

  /** Share of the whole time for the first plan, where that one goes on searching. */
  private static final double FIRST_SHARE = 0.15;

  /** Share of the time that is left which an aim may take. */
  private static final double SHARE = 0.6;

  /** Share of the time that is left for the goals that are late. */
  private static final double LATE_SHARE = 0.7;

  /** A change of place counts as much as so many minutes of moving. */
  private static final int MINUTES_FOR_A_CHANGE = 60;

  private static final String LATE = "minutes late, weighted";

  /** The words for what {@link pourwright.plan.TouchCount} counts. */
  private static final String TOUCHES = "touches and late hours, minutes";

  private static final Duration LEAST = Duration.ofMillis(50);

  private final Planner first;
  private final boolean withReasons;

  /** A planner that starts from what another one finds and gives reasons when there is no plan. */
  public CpSatPlanner(Planner first) {
    this(first, true);
  }

  private CpSatPlanner(Planner first, boolean withReasons) {
    this.first = first;
    this.withReasons = withReasons;
  }

  /** The planner of the house: it starts from the forward rule in many orders. */
  public static CpSatPlanner usual() {
    return new CpSatPlanner(new ForwardSearch(ORDERS_TRIED));
  }

  /** A planner that starts from nothing. */
  public static CpSatPlanner alone() {
    return new CpSatPlanner((problem, effort) -> new NotFound(List.of()), true);
  }

  @Override
  public Outcome plan(PlanProblem problem, Effort effort) {
    long deadline = System.nanoTime() + effort.limit().toNanos();
    Outcome start = first.plan(problem, quick(effort));
    Run run = new Run(problem, effort, deadline);
    if (start instanceof Planned planned && PlanChecker.check(problem, planned.plan()).isEmpty()) {
      run.take(planned.plan());
    }
    return run.outcome();
  }

  private static Effort quick(Effort effort) {
    return until(
        effort,
        System.nanoTime() + (long) (effort.limit().toNanos() * FIRST_SHARE),
        effort.better());
  }

  /** The same effort, given up at a moment of the machine's clock. */
  static Effort until(Effort effort, long deadlineNanos, Consumer<Plan> better) {
    return new Effort(
        effort.limit(),
        effort.seed(),
        effort.workers(),
        effort.hint(),
        better,
        () -> System.nanoTime() > deadlineNanos || effort.cancelled().getAsBoolean());
  }

  private final class Run {
    private final PlanProblem problem;
    private final Effort effort;
    private final long deadline;
    private final PlanModel model;
    private final List<Aim> aims = new ArrayList<>();
    private final AtomicReference<@Nullable Plan> best = new AtomicReference<>();
    private boolean stopped;

    /** No plan has fewer weighted minutes late, as far as is known. */
    private long lowest;

    Run(PlanProblem problem, Effort effort, long deadline) {
      this.problem = problem;
      this.effort = effort;
      this.deadline = deadline;
      this.model = new PlanModel(problem);
    }

    void take(Plan plan) {
      best.set(plan);
      effort.better().accept(plan);
    }

    Outcome outcome() {
      if (model.isImpossible()) {
        return impossible();
      }
      boolean open = !byLateGoals() && (best.get() == null || timeForTheWhole());
      if (open && aim(LATE, model.tardiness(), lowest).impossible()) {
        return impossible();
      }
      Plan plan = best.get();
      if (plan != null && aims.isEmpty()) {
        keep(LATE, model.tardiness(), plan.tardiness(problem), lowest);
      }
      if (plan != null) {
        furtherAims();
      }
      if (plan == null) {
        return new NotFound(List.of("no plan was found in the time given; give it more time"));
      }
      long bound = aims.isEmpty() ? lowest : Math.max(lowest, aims.get(0).bound());
      boolean proven = !aims.isEmpty() && aims.get(0).proven();
      Plan last = best.get();
      return new Planned(last == null ? plan : last, bound, proven, aims);
    }

    /** The dates by the late goals first; true when that proves them best. */
    private boolean byLateGoals() {
      Plan start = best.get();
      if (start == null) {
        return false;
      }
      long end = deadline - (long) ((deadline - System.nanoTime()) * (1 - LATE_SHARE));
      LateGoals late = new LateGoals(problem, effort, end, start, this::take);
      late.search();
      Plan found = best.get();
      long value = found == null ? 0 : found.tardiness(problem);
      lowest = late.bound();
      model.model.addGreaterOrEqual(model.tardiness(), lowest);
      if (!late.proven()) {
        return false;
      }
      keep(LATE, model.tardiness(), value, late.bound());
      stopped |= effort.cancelled().getAsBoolean();
      return true;
    }

    /** False when so little is left that the whole model would only be read. */
    private boolean timeForTheWhole() {
      return deadline - System.nanoTime() > (1 - LATE_SHARE) * effort.limit().toNanos();
    }

    /** What was reached is a rule for the aims that follow. */
    private void keep(String words, LinearExprBuilder objective, long value, long bound) {
      aims.add(new Aim(words, value, bound));
      model.model.addLessOrEqual(objective, value);
    }

    private void furtherAims() {
      Plan keep = effort.hint();
      if (keep != null && !stopped) {
        aim("change to the plan there was", disturbance(keep), 0);
      }
      if (DayRules.applies(problem) && !stopped) {
        touches(keep == null);
      }
      if (DayRules.applies(problem) && !stopped) {
        aim("days and their length, minutes", DayRules.addTo(model), 0);
      }
      if (!stopped) {
        aim("sum of starts, minutes", model.earliness(), 0);
      }
    }

    /** Few touches and short days; where no plan is kept to, from a plan that is laid for them. */
    private void touches(boolean freely) {
      LinearExprBuilder touches = TouchRules.addTo(model);
      Plan known = best.get();
      if (touches == null || known == null) {
        return;
      }
      long least = Gathered.least(problem);
      Plan plan = freely ? new GatheredSearch(problem, effort, deadline).from(known) : known;
      if (!plan.equals(known)) {
        take(plan);
      }
      long value = TouchCount.of(problem, plan).sum();
      model.model.addGreaterOrEqual(touches, least);
      if (value <= least || !aim(TOUCHES, touches, least).answered()) {
        keep(TOUCHES, touches, value, least);
      }
    }

    private Outcome impossible() {
      return new Impossible(
          withReasons ? Conflict.sentences(problem, effort) : List.of("no plan keeps every rule"));
    }

    /** Searches for the least of one thing and makes what was reached a rule for what follows. */
    private Search.Result aim(String words, LinearExprBuilder objective, long least) {
      Duration left = Duration.ofNanos(deadline - System.nanoTime());
      Duration limit = Duration.ofNanos((long) (left.toNanos() * SHARE));
      if (limit.compareTo(LEAST) < 0) {
        limit = LEAST;
        stopped = !aims.isEmpty();
      }
      Plan known = best.get() == null ? effort.hint() : best.get();
      if (known != null) {
        model.model.clearHints();
        model.hint(known);
      }
      LinearExpr sum = objective.build();
      Search search = new Search(effort);
      search.parameters().setCpModelProbingLevel(0);
      Search.Result result =
          search.minimize(model.model, objective, limit, v -> take(model.plan(v)));
      if (result.answered()) {
        take(model.plan(result.values()));
        aims.add(new Aim(words, result.value(), Math.max(least, result.bound())));
        model.model.addLessOrEqual(sum, result.value());
      }
      stopped |= effort.cancelled().getAsBoolean();
      return result;
    }

    /** Minutes by which steps move, and an hour for each that moves at all. */
    private LinearExprBuilder disturbance(Plan keep) {
      LinearExprBuilder sum = LinearExpr.newBuilder();
      Map<String, Placed> places = keep.byStep();
      for (int i = 0; i < model.starts.length; i++) {
        Placed was = places.get(problem.steps().get(i).key());
        if (was != null && !model.domain(i).isEmpty() && model.domain(i).min() >= 0) {
          sum.add(moved(i, was.startMin()));
        }
      }
      return sum;
    }

    private LinearExpr moved(int step, int was) {
      long most =
          Math.max(
              Math.abs(model.domain(step).max() - was), Math.abs(model.domain(step).min() - was));
      IntVar minutes = model.model.newIntVar(0, most, "moved " + step);
      IntVar changed = model.model.newIntVar(0, 1, "changed " + step);
      LinearExpr start = LinearExpr.affine(model.starts[step], 1, -was);
      LinearExpr back = LinearExpr.affine(model.starts[step], -1, was);
      model.model.addGreaterOrEqual(minutes, start);
      model.model.addGreaterOrEqual(minutes, back);
      model.model.addLessOrEqual(minutes, LinearExpr.term(changed, most));
      model.follows(minutes, at -> Math.abs(at[step] - was));
      model.follows(changed, at -> at[step] == was ? 0 : 1);
      return LinearExpr.newBuilder().add(minutes).addTerm(changed, MINUTES_FOR_A_CHANGE).build();
    }
  }
}

package pourwright.solve;

import java.util.ArrayList;
import java.util.List;
import pourwright.plan.DayCount;
import pourwright.plan.FewerDays;
import pourwright.plan.ForwardSearch;
import pourwright.plan.Gathered;
import pourwright.plan.Goal;
import pourwright.plan.PartOfProblem;
import pourwright.plan.Plan;
import pourwright.plan.PlanChecker;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner.Effort;
import pourwright.plan.Planner.Planned;
import pourwright.plan.TouchCount;

/**
 * A plan with few touches and short days that is no later than one that is known: the forward rule
 * in many orders on the gathered problem. Where that makes something later, the goals that are late
 * anyway are held where the known plan has them and the rest is gathered round them.
 */
final class GatheredSearch {
  private static final int ORDERS_TRIED = 2000;

  /** Share of the time that is left for each way. */
  private static final double SHARE = 0.2;

  /** Share of the time that is left for closing days. */
  private static final double FEWER_SHARE = 0.6;

  private final PlanProblem problem;
  private final Effort effort;
  private final long deadline;

  GatheredSearch(PlanProblem problem, Effort effort, long deadline) {
    this.problem = problem;
    this.effort = effort;
    this.deadline = deadline;
  }

  /** The known plan or a better one. */
  Plan from(Plan known) {
    Plan best = known;
    PlanProblem strict = problem;
    for (PlanProblem way : ways(known)) {
      Plan laid = lay(way);
      if (better(laid, best) && PlanChecker.check(problem, laid).isEmpty()) {
        best = laid;
        strict = way;
      }
      if (TouchCount.of(problem, best).sum() <= Gathered.least(problem)) {
        break;
      }
    }
    return strict.equals(problem) ? best : onFewerDays(best, strict);
  }

  private Plan onFewerDays(Plan best, PlanProblem way) {
    long end = System.nanoTime() + (long) ((deadline - System.nanoTime()) * FEWER_SHARE);
    Plan fewer =
        new FewerDays(problem, way)
            .from(best, () -> System.nanoTime() > end || effort.cancelled().getAsBoolean());
    return PlanChecker.check(problem, fewer).isEmpty() ? fewer : best;
  }

  private List<PlanProblem> ways(Plan known) {
    List<PlanProblem> ways = new ArrayList<>(List.of(Gathered.of(problem)));
    List<Goal> late = PartOfProblem.late(problem, known);
    if (!late.isEmpty()) {
      Plan part = PartOfProblem.within(PartOfProblem.of(problem, late), known);
      ways.add(Gathered.of(PartOfProblem.pinned(problem, part)));
    }
    return ways;
  }

  private Plan lay(PlanProblem way) {
    long now = System.nanoTime();
    Effort share = CpSatPlanner.until(effort, now + (long) ((deadline - now) * SHARE), plan -> {});
    return new ForwardSearch(ORDERS_TRIED).plan(way, share) instanceof Planned planned
        ? planned.plan()
        : new Plan(List.of());
  }

  /** No later, and with fewer touches, or as many on fewer and shorter days. */
  private boolean better(Plan plan, Plan than) {
    if (plan.placed().isEmpty() || plan.tardiness(problem) > than.tardiness(problem)) {
      return false;
    }
    long touches = TouchCount.of(problem, plan).sum();
    long before = TouchCount.of(problem, than).sum();
    return touches < before
        || (touches == before
            && DayCount.of(problem, plan).sum() < DayCount.of(problem, than).sum());
  }
}

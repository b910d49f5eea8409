package pourwright.solve;

import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import pourwright.plan.ForwardSearch;
import pourwright.plan.Goal;
import pourwright.plan.PartOfProblem;
import pourwright.plan.Plan;
import pourwright.plan.PlanChecker;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner.Effort;
import pourwright.plan.Planner.Planned;

/**
 * The dates, by the goals that are late first: a part of the problem with only the goals that the
 * best plan misses is small enough to be solved to proof. Its bound holds for the whole, since a
 * plan of the whole is one of the part; its plan is held and the rest is laid round it. Goals that
 * become late by that join the part, until nothing new is late. When the whole is then no later
 * than the part, it is proven.
 */
final class LateGoals {
  /** Orders in which the rest is laid round the part. */
  private static final int ORDERS_TRIED = 60;

  private static final int ROUNDS_MAX = 8;

  /** Share of the time that is left for one part. */
  private static final double SHARE = 0.5;

  private final PlanProblem problem;
  private final Effort effort;
  private final long deadline;
  private final Consumer<Plan> better;
  private Plan best;
  private long bound;

  LateGoals(PlanProblem problem, Effort effort, long deadline, Plan best, Consumer<Plan> better) {
    this.problem = problem;
    this.effort = effort;
    this.deadline = deadline;
    this.best = best;
    this.better = better;
  }

  /** No plan has fewer weighted minutes late. */
  long bound() {
    return bound;
  }

  /** True when the best plan's minutes late are the least. */
  boolean proven() {
    return best.tardiness(problem) <= bound;
  }

  /** Searches until proof or until the time is over. */
  void search() {
    Set<Goal> goals = new LinkedHashSet<>(PartOfProblem.late(problem, best));
    Plan start = best;
    boolean grows = true;
    for (int round = 0; round < ROUNDS_MAX && grows && !proven() && !over(); round++) {
      PlanProblem part = PartOfProblem.of(problem, List.copyOf(goals));
      PlanModel model = new PlanModel(part);
      model.hint(PartOfProblem.within(part, start));
      if (model.isImpossible()) {
        return;
      }
      bound = Math.max(bound, model.leastTardiness());
      Search.Result result = unprobed().minimize(model.model, model.tardiness(), share(), v -> {});
      bound = Math.max(bound, result.bound());
      if (!result.answered()) {
        return;
      }
      Plan whole = lay(model.plan(result.values()));
      if (whole == null) {
        return;
      }
      if (whole.tardiness(problem) < best.tardiness(problem)) {
        best = whole;
        better.accept(whole);
      }
      start = whole;
      grows = goals.addAll(PartOfProblem.late(problem, whole));
    }
  }

  /** The solver's probing takes longer than the whole search of a part. */
  private Search unprobed() {
    Search search = new Search(effort);
    search.parameters().setCpModelProbingLevel(0);
    return search;
  }

  private boolean over() {
    return System.nanoTime() > deadline || effort.cancelled().getAsBoolean();
  }

  private Duration share() {
    return Duration.ofNanos(Math.max(1, (long) ((deadline - System.nanoTime()) * SHARE)));
  }

  /** The whole with the part held where it is; null when that keeps not every rule. */
  private @Nullable Plan lay(Plan part) {
    PlanProblem held = PartOfProblem.pinned(problem, part);
    Effort quick = CpSatPlanner.until(effort, System.nanoTime() + share().toNanos(), plan -> {});
    return new ForwardSearch(ORDERS_TRIED).plan(held, quick) instanceof Planned planned
            && PlanChecker.check(problem, planned.plan()).isEmpty()
        ? planned.plan()
        : null;
  }
}

package pourwright.solve;

import java.time.Duration;
import java.util.List;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;
import pourwright.plan.ProjectLists;

/**
 * The planner's model with its first objective alone and no reasons for what is impossible: the
 * form in which it is measured against published project scheduling instances.
 */
public final class ProjectPlanner implements Planner {
  /** Lists that are tried for a first plan in each second of the limit: some twentieth of it. */
  private static final int TRIES_A_SECOND = 400;

  @Override
  public Outcome plan(PlanProblem problem, Effort effort) {
    long from = System.nanoTime();
    PlanModel plan = new PlanModel(problem);
    if (plan.isImpossible()) {
      return new Impossible(List.of("links and hours leave a step no place"));
    }
    Plan bred = ProjectLists.best(problem, effort.seed(), tries(effort)).orElse(null);
    Plan hint = effort.hint() == null ? bred : effort.hint();
    if (hint != null) {
      plan.hint(hint);
    }
    if (bred != null) {
      effort.better().accept(bred);
      plan.model.addLessOrEqual(plan.tardiness(), bred.tardiness(problem));
    }
    Duration left = effort.limit().minusNanos(System.nanoTime() - from);
    Search.Result result =
        new Search(effort)
            .minimize(
                plan.model, plan.tardiness(), left, v -> effort.better().accept(plan.plan(v)));
    if (result.impossible()) {
      return new Impossible(List.of("no order of the steps keeps every rule"));
    }
    if (!result.answered() && bred != null) {
      return new Planned(bred, result.bound(), false);
    }
    if (!result.answered()) {
      return new NotFound(List.of("nothing found within the limit"));
    }
    return new Planned(plan.plan(result.values()), result.bound(), result.proven());
  }

  private static int tries(Effort effort) {
    return (int) Math.min(100_000, 1 + effort.limit().toSeconds() * TRIES_A_SECOND);
  }
}

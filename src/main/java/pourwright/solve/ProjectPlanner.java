package pourwright.solve;

import java.time.Duration;
import java.util.List;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;

/**
 * The planner's model with its first objective alone and no reasons for what is impossible: the
 * form in which it is measured against published project scheduling instances.
 */
public final class ProjectPlanner implements Planner {
  @Override
  public Outcome plan(PlanProblem problem, Effort effort) {
    long from = System.nanoTime();
    PlanModel plan = new PlanModel(problem);
    if (plan.isImpossible()) {
      return new Impossible(List.of("links and hours leave a step no place"));
    }
    if (effort.hint() != null) {
      plan.hint(effort.hint());
    }
    Duration left = effort.limit().minusNanos(System.nanoTime() - from);
    Search.Result result =
        new Search(effort)
            .minimize(
                plan.model, plan.tardiness(), left, v -> effort.better().accept(plan.plan(v)));
    if (result.impossible()) {
      return new Impossible(List.of("no order of the steps keeps every rule"));
    }
    if (!result.answered()) {
      return new NotFound(List.of("nothing found within the limit"));
    }
    return new Planned(plan.plan(result.values()), result.bound(), result.proven());
  }
}

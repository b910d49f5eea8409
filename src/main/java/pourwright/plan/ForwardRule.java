package pourwright.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * The forward rule of work: batch after batch, the one with the least slack first, each step as
 * early as people, things, waits and hours allow. Where a step comes too late after the one before
 * it (pot life, latest demold, recoat), the earlier one is moved back until it fits.
 *
 * <p>Method: serial schedule generation with a latest-start priority rule. Source: Kolisch, Eur. J.
 * Oper. Res. 90 (1996) 320-333 for the scheme and the rule; the repair of maximum waits is our own.
 * It proves nothing: a better plan may exist.
 */
public final class ForwardRule implements Planner {
  @Override
  public Outcome plan(PlanProblem problem, Effort effort) {
    List<String> impossible = Impossibilities.of(problem);
    if (!impossible.isEmpty()) {
      return new Impossible(impossible);
    }
    Bench bench = new Bench(problem);
    List<String> left = new ArrayList<>();
    for (List<Step> batch : new BatchOrder(problem).batches()) {
      String trouble = new BatchPlacing(problem, bench, batch).place();
      if (!trouble.isEmpty()) {
        left.add(trouble);
      }
    }
    if (!left.isEmpty()) {
      return new NotFound(left);
    }
    Plan plan = new Plan(bench.placed());
    effort.better().accept(plan);
    return new Planned(plan, 0, problem.goals().isEmpty() || plan.tardiness(problem) == 0);
  }
}

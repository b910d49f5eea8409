package pourwright.solve;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pourwright.plan.PlanProblem;
import pourwright.plan.Resource;
import pourwright.plan.Step;
import pourwright.plan.StepKind;

/** Which sets of steps never meet anyway: one pair of hands, or a thing that exists once. */
final class OneByOne {
  private final PlanProblem problem;

  OneByOne(PlanProblem problem) {
    this.problem = problem;
  }

  /** True when some hands or some single thing is needed by all of them. */
  boolean areOneByOne(List<Integer> steps) {
    if (steps.size() < 2) {
      return true;
    }
    Set<String> shared = new HashSet<>(claims(problem.steps().get(steps.get(0))));
    for (int i : steps) {
      shared.retainAll(claims(problem.steps().get(i)));
    }
    return !shared.isEmpty();
  }

  private Set<String> claims(Step step) {
    Set<String> claims = new HashSet<>();
    if (step.kind() == StepKind.HANDS) {
      List<Resource> who = StartTimes.candidates(problem, step);
      if (who.size() == 1 && who.get(0).capacity() == 1) {
        claims.add(who.get(0).key());
      }
    }
    for (Resource thing : problem.resources()) {
      if (thing.capacity() == 1 && step.uses().containsKey(thing.key())) {
        claims.add(thing.key());
      }
    }
    return claims;
  }
}

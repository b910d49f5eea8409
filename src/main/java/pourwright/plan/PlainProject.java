package pourwright.plan;

import java.util.Map;

/** Whether a problem is a project and nothing else: order, things with a count, one end. */
final class PlainProject {
  private PlainProject() {}

  static boolean is(PlanProblem problem) {
    boolean steps =
        problem.steps().stream()
            .allMatch(
                s ->
                    s.kind() == StepKind.WAIT && s.fixedStartMin() == null && s.earliestMin() <= 0);
    boolean fits =
        problem.steps().stream().mapToInt(Step::minutes).sum() <= problem.horizonMin()
            && problem.steps().stream().noneMatch(Step::hot);
    boolean things =
        problem.resources().stream()
            .allMatch(r -> r.windows().isEmpty() && r.kind() != Resource.Kind.PERSON);
    return steps
        && fits
        && things
        && enough(problem)
        && problem.links().stream().allMatch(l -> l.minMin() == 0 && l.maxMin() == null)
        && problem.spans().isEmpty()
        && problem.apart().isEmpty()
        && problem.washings().isEmpty()
        && problem.goals().size() == 1;
  }

  private static boolean enough(PlanProblem problem) {
    Map<String, Resource> things = problem.resourcesByKey();
    return problem.steps().stream()
        .flatMap(s -> s.uses().entrySet().stream())
        .allMatch(
            u -> {
              Resource thing = things.get(u.getKey());
              return thing != null && u.getValue() <= thing.capacity();
            });
  }
}

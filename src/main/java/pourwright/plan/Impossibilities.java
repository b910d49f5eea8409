package pourwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Steps that no plan can hold, whatever else is planned. */
final class Impossibilities {
  private Impossibilities() {}

  static List<String> of(PlanProblem problem) {
    List<String> found = new ArrayList<>();
    Map<String, Resource> resources = problem.resourcesByKey();
    List<Window> presence = problem.presence();
    for (Step step : problem.steps()) {
      if (step.fixedStartMin() != null) {
        continue;
      }
      step.uses().forEach((key, amount) -> tooMany(step, resources.get(key), amount, found));
      if (step.kind() == StepKind.HANDS) {
        int longest =
            problem.people().stream()
                .filter(p -> step.people().isEmpty() || step.people().contains(p.key()))
                .mapToInt(p -> longest(p.windows()))
                .max()
                .orElse(0);
        tooLong(step, longest, "hands", found);
      } else if (step.kind() == StepKind.WATCH || step.hot()) {
        tooLong(step, longest(presence), "somebody there", found);
      }
    }
    return found;
  }

  private static void tooMany(
      Step step,
      @org.jspecify.annotations.Nullable Resource resource,
      int amount,
      List<String> found) {
    if (resource != null && amount > resource.capacity()) {
      found.add(
          step.words()
              + " needs "
              + amount
              + " of "
              + resource.words()
              + "; there are "
              + resource.capacity());
    }
  }

  private static void tooLong(Step step, int longest, String what, List<String> found) {
    if (step.minutes() > longest) {
      found.add(
          step.words()
              + " needs "
              + what
              + " for "
              + step.minutes()
              + " minutes in one go; the longest stretch of work is "
              + longest
              + " minutes");
    }
  }

  private static int longest(List<Window> windows) {
    return windows.stream().mapToInt(w -> w.toMin() - w.fromMin()).max().orElse(0);
  }
}

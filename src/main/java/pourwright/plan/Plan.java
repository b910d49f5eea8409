package pourwright.plan;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Every step with its place in time, in order of begin.
 *
 * @param placed all steps of the problem
 */
public record Plan(List<Placed> placed) {
  /** Sorts the steps by begin, then end, then key. */
  public Plan {
    placed =
        placed.stream()
            .sorted(
                Comparator.comparingInt(Placed::startMin)
                    .thenComparingInt(Placed::endMin)
                    .thenComparing(Placed::step))
            .toList();
  }

  /** Places by step. */
  public Map<String, Placed> byStep() {
    Map<String, Placed> byStep = new HashMap<>();
    placed.forEach(p -> byStep.put(p.step(), p));
    return byStep;
  }

  /**
   * The place of a step.
   *
   * @throws pourwright.quantity.OutOfRange when it has none
   */
  public Placed at(String step) {
    return placed.stream()
        .filter(p -> p.step().equals(step))
        .findFirst()
        .orElseThrow(
            () ->
                new pourwright.quantity.OutOfRange(
                    "step", "the plan has no step " + step, "plan again"));
  }

  /** Weighted minutes that goals are late, in sum: the first thing to keep small. */
  public long tardiness(PlanProblem problem) {
    Map<String, Placed> places = byStep();
    long sum = 0;
    for (Goal goal : problem.goals()) {
      Placed last = places.get(goal.lastStep());
      int end = last == null ? problem.horizonMin() : last.endMin();
      sum += (long) goal.weight() * Math.max(0, end - goal.dueMin());
    }
    return sum;
  }
}

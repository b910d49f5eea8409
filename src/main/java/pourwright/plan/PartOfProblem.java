package pourwright.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A problem with some of its goals only: their batches, the batches those wait for, and what has
 * begun. Whatever keeps the rules of the whole keeps those of the part, so the part is never later:
 * what no plan of the part can go below, no plan of the whole can.
 */
public final class PartOfProblem {
  private PartOfProblem() {}

  /** The goals that a plan misses. */
  public static List<Goal> late(PlanProblem problem, Plan plan) {
    Map<String, Placed> places = plan.byStep();
    List<Goal> late = new ArrayList<>();
    for (Goal goal : problem.goals()) {
      Placed last = places.get(goal.lastStep());
      if (last == null || last.endMin() > goal.dueMin()) {
        late.add(goal);
      }
    }
    return late;
  }

  /** The part of the problem that certain goals hang on. */
  public static PlanProblem of(PlanProblem problem, List<Goal> goals) {
    Map<String, Step> steps = problem.stepsByKey();
    Set<String> batches = new HashSet<>();
    for (Goal goal : goals) {
      add(steps.get(goal.lastStep()), batches);
    }
    problem.steps().stream().filter(Step::begun).forEach(s -> add(s, batches));
    for (boolean grows = true; grows; ) {
      grows = false;
      for (Link link : problem.links()) {
        Step after = steps.get(link.after());
        if (after != null && batches.contains(after.batch())) {
          grows |= add(steps.get(link.before()), batches);
        }
      }
    }
    return new PlanProblem(
        problem.origin(),
        problem.zone(),
        problem.horizonMin(),
        problem.resources(),
        problem.steps().stream().filter(s -> batches.contains(s.batch())).toList(),
        problem.links().stream()
            .filter(l -> inside(l.before(), steps, batches) && inside(l.after(), steps, batches))
            .toList(),
        problem.spans().stream()
            .filter(s -> inside(s.fromStep(), steps, batches) && inside(s.toStep(), steps, batches))
            .toList(),
        goals,
        problem.apart(),
        problem.washings(),
        problem.lastHotStartMin());
  }

  private static boolean add(@org.jspecify.annotations.Nullable Step step, Set<String> batches) {
    return step != null && batches.add(step.batch());
  }

  private static boolean inside(String step, Map<String, Step> steps, Set<String> batches) {
    Step it = steps.get(step);
    return it != null && batches.contains(it.batch());
  }

  /** The steps of a plan that the problem knows. */
  public static Plan within(PlanProblem problem, Plan plan) {
    Map<String, Step> steps = problem.stepsByKey();
    return new Plan(plan.placed().stream().filter(p -> steps.containsKey(p.step())).toList());
  }

  /** The problem with every step of a plan of a part held where that plan puts it. */
  public static PlanProblem pinned(PlanProblem problem, Plan part) {
    Map<String, Placed> places = part.byStep();
    List<Step> steps = new ArrayList<>();
    for (Step step : problem.steps()) {
      Placed place = places.get(step.key());
      steps.add(place == null || step.begun() ? step : held(step, place));
    }
    return new PlanProblem(
        problem.origin(),
        problem.zone(),
        problem.horizonMin(),
        problem.resources(),
        steps,
        problem.links(),
        problem.spans(),
        problem.goals(),
        problem.apart(),
        problem.washings(),
        problem.lastHotStartMin());
  }

  private static Step held(Step step, Placed place) {
    Step fixed = step.fixedAt(place.startMin());
    return place.person() == null ? fixed : fixed.by(Set.of(place.person()));
  }
}

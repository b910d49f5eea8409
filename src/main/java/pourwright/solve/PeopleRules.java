package pourwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntervalVar;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.plan.PlanProblem;
import pourwright.plan.Resource;
import pourwright.plan.Step;
import pourwright.plan.StepKind;
import pourwright.plan.Window;

/** One pair of hands does one thing at a time, within its own hours. */
final class PeopleRules {
  private final PlanModel plan;
  private final Map<String, List<IntervalVar>> work = new LinkedHashMap<>();
  private final Map<String, Long> running = new LinkedHashMap<>();
  private final List<IntervalVar> anyHands = new ArrayList<>();

  private PeopleRules(PlanModel plan) {
    this.plan = plan;
  }

  static void addTo(PlanModel plan) {
    PeopleRules rules = new PeopleRules(plan);
    List<Step> steps = plan.problem.steps();
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).kind() == StepKind.HANDS && plan.isHistory(i)) {
        rules.addRunning(i, StartTimes.candidates(plan.problem, steps.get(i)));
      } else if (steps.get(i).kind() == StepKind.HANDS) {
        rules.addHands(i, StartTimes.candidates(plan.problem, steps.get(i)));
      }
    }
    rules.running.forEach(
        (person, end) ->
            rules
                .work
                .computeIfAbsent(person, k -> new ArrayList<>())
                .add(plan.model.newFixedInterval(0, end, "in hand " + person)));
    Map<String, Resource> resources = plan.problem.resourcesByKey();
    rules.work.forEach(
        (person, hands) -> {
          Resource it = resources.get(person);
          if (it != null && it.capacity() == 1) {
            rules.addBreaks(it, hands);
            plan.model.addNoOverlap(hands);
          } // more pairs of hands than steps: the rule is left out, see Relaxed
        });
    rules.addPairsOfHands();
  }

  private void addHands(int step, List<Resource> candidates) {
    int minutes = plan.minutes(step);
    if (candidates.size() == 1) {
      if (minutes > 0) {
        hands(candidates.get(0)).add(plan.intervals[step]);
        anyHands.add(plan.intervals[step]);
      }
      return;
    }
    List<BoolVar> choice = new ArrayList<>();
    for (Resource person : candidates) {
      String name = plan.problem.steps().get(step).key() + " by " + person.key();
      BoolVar does = plan.model.newBoolVar(name);
      plan.people.get(step).put(person.key(), does);
      choice.add(does);
      plan.model
          .addLinearExpressionInDomain(
              plan.starts[step], StartTimes.within(person.windows(), minutes, 0))
          .onlyEnforceIf(does);
      if (minutes > 0) {
        hands(person)
            .add(
                plan.model.newOptionalFixedSizeIntervalVar(plan.starts[step], minutes, does, name));
      }
    }
    plan.model.addExactlyOne(choice.toArray(new BoolVar[0]));
    if (minutes > 0) {
      anyHands.add(plan.intervals[step]);
    }
  }

  /**
   * Work that is in hand at the origin keeps its hands until it ends, when it is known whose. Two
   * such works at once are a fact and no contradiction: the longer one counts.
   */
  private void addRunning(int step, List<Resource> candidates) {
    long end = plan.latestEnd(step);
    if (end > 0 && candidates.size() == 1) {
      running.merge(candidates.get(0).key(), end, Math::max);
    }
  }

  /** Nights and breaks stand among the work: the solver then sees how little a day holds. */
  private void addBreaks(Resource person, List<IntervalVar> hands) {
    long from = 0;
    for (Window window : person.windows()) {
      if (window.fromMin() > from) {
        hands.add(plan.model.newFixedInterval(from, window.fromMin() - from, "break " + from));
      }
      from = window.toMin();
    }
  }

  private List<IntervalVar> hands(Resource person) {
    return work.computeIfAbsent(person.key(), k -> new ArrayList<>());
  }

  /** What follows from the rule for each person, said once for all: it lets the solver see more. */
  private void addPairsOfHands() {
    int pairs = plan.problem.people().stream().mapToInt(Resource::capacity).sum();
    if (pairs > 1 && anyHands.size() > pairs) {
      CumulativeConstraint all = plan.model.addCumulative(pairs);
      anyHands.forEach(interval -> all.addDemand(interval, 1));
    }
  }

  /** The person who does a step when there is but one; null when it needs no hands. */
  static @Nullable String onlyOne(PlanProblem problem, Step step) {
    if (step.kind() != StepKind.HANDS) {
      return null;
    }
    List<Resource> candidates = StartTimes.candidates(problem, step);
    return candidates.isEmpty() ? null : candidates.get(0).key();
  }
}

package pourwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.plan.Apart;
import pourwright.plan.PlanProblem;
import pourwright.plan.Resource;
import pourwright.plan.Span;
import pourwright.plan.Step;
import pourwright.plan.Washing;

/** Molds, melter, pitchers and places; what may not meet; washing between families. */
final class ThingRules {
  private record Use(IntervalVar interval, int amount) {}

  private final PlanModel plan;
  private final PlanProblem problem;

  private ThingRules(PlanModel plan) {
    this.plan = plan;
    this.problem = plan.problem;
  }

  static void addTo(PlanModel plan) {
    ThingRules rules = new ThingRules(plan);
    for (Resource resource : rules.problem.resources()) {
      if (resource.kind() != Resource.Kind.PERSON) {
        rules.addCapacity(resource);
      }
    }
    rules.problem.apart().forEach(rules::addApart);
    rules.problem.washings().forEach(rules::addWashing);
  }

  private void addCapacity(Resource thing) {
    List<Use> uses = uses(thing.key());
    long sum = uses.stream().mapToLong(Use::amount).sum();
    if (sum <= thing.capacity()) {
      return;
    }
    if (thing.capacity() == 1 && uses.stream().allMatch(u -> u.amount() == 1)) {
      plan.model.addNoOverlap(uses.stream().map(Use::interval).toList());
      return;
    }
    CumulativeConstraint shared = plan.model.addCumulative(thing.capacity());
    uses.forEach(u -> shared.addDemand(u.interval(), u.amount()));
  }

  private List<Use> uses(String thing) {
    List<Use> uses = new ArrayList<>();
    List<Step> steps = problem.steps();
    for (int i = 0; i < steps.size(); i++) {
      int amount = steps.get(i).uses().getOrDefault(thing, 0);
      if (amount > 0 && steps.get(i).minutes() > 0) {
        uses.add(new Use(plan.intervals[i], amount));
      }
    }
    for (Span span : problem.spans()) {
      if (span.resource().equals(thing) && span.amount() > 0) {
        uses.add(new Use(held(span), span.amount()));
      }
    }
    return uses;
  }

  /** From the start of one step to the end of another. */
  private IntervalVar held(Span span) {
    int from = plan.of(span.fromStep());
    int to = plan.of(span.toStep());
    String name = span.resource() + " from " + span.fromStep() + " to " + span.toStep();
    if (from == to) {
      return plan.intervals[from];
    }
    IntVar size =
        plan.model.newIntVar(0, plan.latestEnd(to) - plan.domain(from).min(), "size " + name);
    LinearExpr end = LinearExpr.affine(plan.starts[to], 1, plan.minutes(to));
    return plan.model.newIntervalVar(plan.starts[from], size, end, name);
  }

  private void addApart(Apart rule) {
    List<Integer> some = tagged(rule.tag());
    List<Integer> others = tagged(rule.otherTag());
    if (rule.tag().equals(rule.otherTag())) {
      plan.model.addNoOverlap(some.stream().map(i -> plan.intervals[i]).toList());
      return;
    }
    for (int i : some) {
      for (int j : others) {
        if (i != j && canMeet(i, j)) {
          plan.model.addNoOverlap(List.of(plan.intervals[i], plan.intervals[j]));
        }
      }
    }
  }

  private List<Integer> tagged(String tag) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < problem.steps().size(); i++) {
      Step step = problem.steps().get(i);
      if (step.tags().contains(tag) && step.minutes() > 0) {
        found.add(i);
      }
    }
    return found;
  }

  private boolean canMeet(int i, int j) {
    return plan.domain(i).min() < plan.latestEnd(j) && plan.domain(j).min() < plan.latestEnd(i);
  }

  private void addWashing(Washing washing) {
    List<Integer> users = new ArrayList<>();
    for (int i = 0; i < problem.steps().size(); i++) {
      Step step = problem.steps().get(i);
      if (step.uses().containsKey(washing.resource()) && step.family() != null) {
        users.add(i);
      }
    }
    for (int a = 0; a < users.size(); a++) {
      for (int b = a + 1; b < users.size(); b++) {
        int i = users.get(a);
        int j = users.get(b);
        if (differ(problem.steps().get(i).family(), problem.steps().get(j).family())) {
          BoolVar first = plan.model.newBoolVar("wash " + i + " before " + j);
          plan.model.addGreaterOrEqual(gap(i, j), washing.minutes()).onlyEnforceIf(first);
          plan.model.addGreaterOrEqual(gap(j, i), washing.minutes()).onlyEnforceIf(first.not());
        }
      }
    }
  }

  private static boolean differ(@Nullable String one, @Nullable String other) {
    return one != null && !one.equals(other);
  }

  /** Minutes from the end of one step to the start of another. */
  private LinearExpr gap(int before, int after) {
    return LinearExpr.newBuilder()
        .add(plan.starts[after])
        .addTerm(plan.starts[before], -1)
        .add(-plan.minutes(before))
        .build();
  }

}

package pourwright.solve;

import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
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
  private final OneByOne disjoint;

  private ThingRules(PlanModel plan) {
    this.plan = plan;
    this.disjoint = new OneByOne(plan.problem);
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
    plan.follows(size, at -> at[to] + plan.minutes(to) - at[from]);
    return plan.model.newIntervalVar(plan.starts[from], size, end, name);
  }

  private void addApart(Apart rule) {
    List<Integer> some = tagged(rule.tag());
    List<Integer> others = tagged(rule.otherTag());
    if (rule.tag().equals(rule.otherTag())) {
      plan.model.addNoOverlap(some.stream().map(i -> plan.intervals[i]).toList());
      return;
    }
    boolean oneByOne = disjoint.areOneByOne(some);
    boolean othersOneByOne = disjoint.areOneByOne(others);
    if (disjoint.areOneByOne(joined(some, others))) {
      return; // they share hands or a thing that exists once
    }
    if (oneByOne && othersOneByOne) {
      plan.model.addNoOverlap(joined(some, others).stream().map(i -> plan.intervals[i]).toList());
    } else if (oneByOne || othersOneByOne) {
      shutOut(
          oneByOne ? some : others,
          (oneByOne ? others : some).stream().map(i -> plan.intervals[i]).toList());
    } else {
      apartByPairs(some, others);
    }
  }

  private static List<Integer> joined(List<Integer> some, List<Integer> others) {
    Set<Integer> all = new LinkedHashSet<>(some);
    all.addAll(others);
    return List.copyOf(all);
  }

  /**
   * Steps that never meet each other fill a store to the brim; each of the many takes one place in
   * it. One constraint instead of one for each pair.
   */
  private void shutOut(List<Integer> oneByOne, List<IntervalVar> many) {
    int brim = Math.max(1, many.size());
    CumulativeConstraint store = plan.model.addCumulative(brim);
    oneByOne.forEach(i -> store.addDemand(plan.intervals[i], brim));
    many.forEach(interval -> store.addDemand(interval, 1));
  }

  private void apartByPairs(List<Integer> some, List<Integer> others) {
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

  /**
   * For each family: its steps, longer by the washing at either side, shut out the steps of every
   * other family on the same thing.
   */
  private void addWashing(Washing washing) {
    Map<String, List<Integer>> families = new TreeMap<>();
    for (int i = 0; i < problem.steps().size(); i++) {
      Step step = problem.steps().get(i);
      if (step.uses().containsKey(washing.resource())) {
        String family = Objects.requireNonNullElse(step.family(), "");
        families.computeIfAbsent(family, f -> new ArrayList<>()).add(i);
      }
    }
    families.forEach(
        (family, own) -> {
          List<Integer> others = new ArrayList<>();
          families.forEach(
              (other, steps) -> others.addAll(other.equals(family) ? List.of() : steps));
          if (!others.isEmpty()) {
            shutOut(others, own.stream().map(i -> washed(i, washing.minutes())).toList());
          }
        });
  }

  private IntervalVar washed(int step, int minutes) {
    return plan.model.newFixedSizeIntervalVar(
        plan.starts[step], plan.minutes(step) + (long) minutes, "washed " + step);
  }
}

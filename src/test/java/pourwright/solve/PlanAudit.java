package pourwright.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pourwright.plan.Apart;
import pourwright.plan.Link;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Resource;
import pourwright.plan.Span;
import pourwright.plan.Step;
import pourwright.plan.StepKind;
import pourwright.plan.Washing;

/** Walks through a plan minute by minute and counts; knows nothing of the solver's model. */
final class PlanAudit {
  private final PlanProblem problem;
  private final Map<String, Step> steps;
  private final Map<String, Placed> places;
  private final Set<String> found = new TreeSet<>();

  private PlanAudit(PlanProblem problem, Plan plan) {
    this.problem = problem;
    this.steps = problem.stepsByKey();
    this.places = plan.byStep();
  }

  /** What is wrong with a plan; empty when nothing is. */
  static Set<String> of(PlanProblem problem, Plan plan) {
    PlanAudit audit = new PlanAudit(problem, plan);
    if (!audit.places.keySet().equals(audit.steps.keySet())) {
      audit.found.add("not every step is placed once");
      return audit.found;
    }
    audit.places.values().forEach(audit::step);
    problem.links().forEach(audit::link);
    audit.minutes();
    problem.washings().forEach(audit::washing);
    return audit.found;
  }

  private Placed place(String step) {
    Placed placed = places.get(step);
    if (placed == null) {
      throw new IllegalArgumentException(step);
    }
    return placed;
  }

  private void step(Placed placed) {
    Step step = steps.get(placed.step());
    if (step == null || placed.endMin() - placed.startMin() != step.minutes()) {
      found.add("length of " + placed.step());
      return;
    }
    Integer fixed = step.fixedStartMin();
    if (fixed != null && placed.startMin() != fixed) {
      found.add("moved although fixed: " + step.key());
    }
    if (fixed == null && placed.startMin() < Math.max(0, step.earliestMin())) {
      found.add("too early: " + step.key());
    }
    if (placed.endMin() > problem.horizonMin()) {
      found.add("past the horizon: " + step.key());
    }
    if (step.hot() && placed.startMin() >= 0) {
      for (int m = 0; m < problem.lastHotStartMin(); m++) {
        if (!anybody(placed.startMin() + m)) {
          found.add("begun hot just before closing: " + step.key());
        }
      }
    }
  }

  private boolean anybody(int minute) {
    return problem.people().stream().anyMatch(p -> isThere(p, minute));
  }

  private static boolean isThere(Resource resource, int minute) {
    return resource.windows().stream().anyMatch(w -> w.fromMin() <= minute && minute < w.toMin());
  }

  private void link(Link link) {
    int gap = place(link.after()).startMin() - place(link.before()).endMin();
    if (gap < link.minMin() || (link.maxMin() != null && gap > link.maxMin())) {
      found.add("wait between " + link.before() + " and " + link.after() + ": " + gap);
    }
  }

  private void minutes() {
    Map<Integer, List<Placed>> at = new HashMap<>();
    for (Placed placed : places.values()) {
      for (int m = Math.max(0, placed.startMin()); m < placed.endMin(); m++) {
        at.computeIfAbsent(m, k -> new ArrayList<>()).add(placed);
      }
    }
    at.forEach(this::minute);
    for (Resource thing : problem.resources()) {
      if (thing.kind() != Resource.Kind.PERSON) {
        held(thing, at);
      }
    }
  }

  private void minute(int minute, List<Placed> now) {
    Map<String, Integer> hands = new HashMap<>();
    for (Placed placed : now) {
      Step step = steps.get(placed.step());
      if (step == null || placed.startMin() < 0) {
        continue;
      }
      if (step.kind() == StepKind.HANDS) {
        hands.merge(String.valueOf(placed.person()), 1, Integer::sum);
        Resource who = problem.resourcesByKey().get(String.valueOf(placed.person()));
        boolean may = step.people().isEmpty() || step.people().contains(placed.person());
        if (who == null || !may || !isThere(who, minute)) {
          found.add("nobody's hands for " + step.key());
        }
      }
      if ((step.kind() == StepKind.WATCH || step.hot()) && !anybody(minute)) {
        found.add("nobody watches " + step.key());
      }
    }
    hands.forEach(
        (who, count) ->
            found.addAll(count > 1 ? List.of("two things at once: " + who) : List.of()));
    problem.apart().forEach(rule -> meet(rule, now));
  }

  private void meet(Apart rule, List<Placed> now) {
    for (Placed one : now) {
      for (Placed other : now) {
        Step a = steps.get(one.step());
        Step b = steps.get(other.step());
        if (a != null
            && b != null
            && !a.key().equals(b.key())
            && a.tags().contains(rule.tag())
            && b.tags().contains(rule.otherTag())) {
          found.add(rule.reason() + ": " + a.key() + " and " + b.key());
        }
      }
    }
  }

  private void held(Resource thing, Map<Integer, List<Placed>> at) {
    Map<Integer, Integer> used = new HashMap<>();
    at.forEach(
        (minute, now) -> {
          for (Placed placed : now) {
            Step step = steps.get(placed.step());
            int amount = step == null ? 0 : step.uses().getOrDefault(thing.key(), 0);
            used.merge(minute, amount, Integer::sum);
            if (amount > 0 && !thing.windows().isEmpty() && !isThere(thing, minute)) {
              found.add(thing.words() + " cannot be used then");
            }
          }
        });
    for (Span span : problem.spans()) {
      if (span.resource().equals(thing.key())) {
        for (int m = Math.max(0, place(span.fromStep()).startMin());
            m < place(span.toStep()).endMin();
            m++) {
          used.merge(m, span.amount(), Integer::sum);
        }
      }
    }
    if (used.values().stream().anyMatch(u -> u > thing.capacity())) {
      found.add("not enough of " + thing.words());
    }
  }

  private void washing(Washing washing) {
    for (Placed one : places.values()) {
      for (Placed other : places.values()) {
        Step a = steps.get(one.step());
        Step b = steps.get(other.step());
        if (a == null
            || b == null
            || a.family() == null
            || b.family() == null
            || a.family().equals(b.family())
            || !a.uses().containsKey(washing.resource())
            || !b.uses().containsKey(washing.resource())) {
          continue;
        }
        if (one.startMin() <= other.startMin()
            && other.startMin() < one.endMin() + washing.minutes()) {
          found.add("no washing between " + a.key() + " and " + b.key());
        }
      }
    }
  }
}

package pourwright.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import pourwright.plan.Link;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Span;
import pourwright.plan.Step;
import pourwright.plan.StepKind;

/** A plan that keeps every rule, broken on purpose in one way at a time. */
final class BrokenPlans {
  private final PlanProblem problem;
  private final Plan plan;
  private final Map<String, Step> steps;
  private final Map<String, Plan> broken = new LinkedHashMap<>();

  private BrokenPlans(PlanProblem problem, Plan plan) {
    this.problem = problem;
    this.plan = plan;
    this.steps = problem.stepsByKey();
  }

  /** Broken plans by what was done to them. */
  static Map<String, Plan> of(PlanProblem problem, Plan plan) {
    BrokenPlans all = new BrokenPlans(problem, plan);
    all.oneStep();
    all.links();
    all.twoAtOnce();
    all.moldTwice();
    return all.broken;
  }

  private Step step(Placed placed) {
    return java.util.Objects.requireNonNull(steps.get(placed.step()));
  }

  private void put(String what, Placed from, UnaryOperator<Placed> change) {
    List<Placed> places = new ArrayList<>(plan.placed());
    places.replaceAll(p -> p.equals(from) ? change.apply(p) : p);
    broken.putIfAbsent(what, new Plan(places));
  }

  private static Placed at(Placed placed, int start) {
    return new Placed(
        placed.step(), start, start + placed.endMin() - placed.startMin(), placed.person());
  }

  private void oneStep() {
    Placed first = plan.placed().get(0);
    broken.put("a step is left out", new Plan(plan.placed().subList(1, plan.placed().size())));
    put(
        "a step is a minute short",
        first,
        p -> new Placed(p.step(), p.startMin(), p.endMin() - 1, p.person()));
    put("a step ends after the horizon", first, p -> at(p, problem.horizonMin()));
    for (Placed placed : plan.placed()) {
      Step step = step(placed);
      int night = placed.startMin() - placed.startMin() % 1440 + 1380;
      if (step.hot() && step.kind() == StepKind.WATCH) {
        put("something hot goes through the night", placed, p -> at(p, night));
      }
      if (step.kind() == StepKind.HANDS) {
        put("hands work at night", placed, p -> at(p, night));
        put("nobody does it", placed, p -> new Placed(p.step(), p.startMin(), p.endMin(), null));
      }
    }
  }

  private void links() {
    Map<String, Placed> places = plan.byStep();
    for (Link link : problem.links()) {
      Placed before = places.get(link.before());
      Placed after = places.get(link.after());
      if (before == null || after == null) {
        continue;
      }
      put(
          "a step comes before its wait is over",
          after,
          p -> at(p, before.endMin() + link.minMin() - 1));
      Integer most = link.maxMin();
      if (most != null) {
        put("a step comes too late", after, p -> at(p, before.endMin() + most + 1));
      }
    }
  }

  private void twoAtOnce() {
    Placed last = null;
    for (Placed placed : plan.placed()) {
      if (step(placed).kind() == StepKind.HANDS) {
        if (last != null && java.util.Objects.equals(last.person(), placed.person())) {
          int start = last.startMin();
          put("one pair of hands does two things", placed, p -> at(p, start));
        }
        last = placed;
      }
    }
  }

  /** Every step of one cast begins when another begins that fills the same mold. */
  private void moldTwice() {
    Map<String, Placed> places = plan.byStep();
    for (Span one : problem.spans()) {
      for (Span other : problem.spans()) {
        int count =
            problem.resources().stream()
                .filter(r -> r.key().equals(one.resource()))
                .mapToInt(r -> r.capacity())
                .sum();
        Placed from = places.get(one.fromStep());
        Placed to = places.get(other.fromStep());
        if (!one.equals(other)
            && one.resource().equals(other.resource())
            && count == 1
            && from != null
            && to != null) {
          int by = from.startMin() - to.startMin();
          String batch = step(to).batch();
          broken.putIfAbsent(
              "a mold is filled twice at once",
              new Plan(
                  plan.placed().stream()
                      .map(p -> step(p).batch().equals(batch) ? at(p, p.startMin() + by) : p)
                      .toList()));
        }
      }
    }
  }
}

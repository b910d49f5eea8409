package pourwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;
import pourwright.plan.Goal;
import pourwright.plan.Link;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Step;

/**
 * A plan problem as variables of the solver: one start for each step, a choice of person where more
 * than one may do it. Hours and fixed starts are in the domains of the starts; {@link ThingRules}
 * and {@link PeopleRules} add what steps compete for.
 */
final class PlanModel {
  final CpModel model = Cp.model();
  final PlanProblem problem;
  final IntVar[] starts;
  final IntervalVar[] intervals;

  /** For each step, who might do it; empty where there is no choice. */
  final List<Map<String, BoolVar>> people = new ArrayList<>();

  private record Follower(IntVar variable, ToLongFunction<long[]> fromStarts) {}

  private final List<Follower> followers = new ArrayList<>();
  private final Map<String, Integer> index;
  private final Domain[] domains;

  PlanModel(PlanProblem problem) {
    this.problem = problem;
    this.index = StartTimes.index(problem);
    this.domains = StartTimes.of(problem);
    List<Step> steps = problem.steps();
    starts = new IntVar[steps.size()];
    intervals = new IntervalVar[steps.size()];
    if (StartTimes.impossible(domains)) {
      model.addBoolOr(new Literal[0]);
      return;
    }
    for (int i = 0; i < starts.length; i++) {
      Step step = steps.get(i);
      starts[i] = model.newIntVarFromDomain(domains[i], step.key());
      intervals[i] = model.newFixedSizeIntervalVar(starts[i], step.minutes(), step.key());
      people.add(new LinkedHashMap<>());
    }
    problem.links().forEach(this::addLink);
    ThingRules.addTo(this);
    PeopleRules.addTo(this);
  }

  /** True when hours and links alone leave some step no place. */
  boolean isImpossible() {
    return StartTimes.impossible(domains);
  }

  /** Index of a step. */
  int of(String step) {
    Integer i = index.get(step);
    if (i == null) {
      throw new IllegalArgumentException("no step " + step);
    }
    return i;
  }

  Domain domain(int step) {
    return domains[step];
  }

  int minutes(int step) {
    return problem.steps().get(step).minutes();
  }

  /** True for a step that was begun before the origin: it stands where it stands. */
  boolean isHistory(int step) {
    Integer fixed = problem.steps().get(step).fixedStartMin();
    return fixed != null && fixed < 0;
  }

  /** Earliest possible end of a step. */
  long earliestEnd(int step) {
    return domains[step].min() + minutes(step);
  }

  /** Latest possible end of a step. */
  long latestEnd(int step) {
    return domains[step].max() + minutes(step);
  }

  private void addLink(Link link) {
    int before = of(link.before());
    int after = of(link.after());
    if (isHistory(before) && isHistory(after)) {
      return;
    }
    long least = (long) minutes(before) + link.minMin();
    LinearExpr gap =
        LinearExpr.weightedSum(new IntVar[] {starts[after], starts[before]}, new long[] {1, -1});
    if (link.maxMin() == null) {
      model.addGreaterOrEqual(gap, least);
    } else {
      model.addLinearConstraint(gap, least, (long) minutes(before) + link.maxMin());
    }
  }

  /** Weighted minutes late, over all goals. */
  LinearExprBuilder tardiness() {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (Goal goal : problem.goals()) {
      int step = of(goal.lastStep());
      long offset = (long) minutes(step) - goal.dueMin();
      if (earliestEnd(step) >= goal.dueMin()) {
        sum.addTerm(starts[step], goal.weight()).add(offset * goal.weight());
      } else if (latestEnd(step) > goal.dueMin()) {
        IntVar late = model.newIntVar(0, latestEnd(step) - goal.dueMin(), "late " + goal.key());
        LinearExprBuilder end = LinearExpr.newBuilder().add(starts[step]).add(offset);
        model.addGreaterOrEqual(late, end);
        follows(late, at -> Math.max(0, at[step] + offset));
        sum.addTerm(late, goal.weight());
      }
    }
    return sum;
  }

  /** Weighted minutes late that hours and waits alone make sure of. */
  long leastTardiness() {
    long least = 0;
    for (Goal goal : problem.goals()) {
      least += goal.weight() * Math.max(0, earliestEnd(of(goal.lastStep())) - goal.dueMin());
    }
    return least;
  }

  /** Sum of all starts: the earlier, the more is left for surprises. */
  LinearExprBuilder earliness() {
    return LinearExpr.newBuilder().addSum(starts);
  }

  /** Says how a variable follows from the starts, so that a hint can be whole. */
  void follows(IntVar variable, ToLongFunction<long[]> fromStarts) {
    followers.add(new Follower(variable, fromStarts));
  }

  /** Starts from a plan; steps that it does not place are left open. */
  void hint(Plan plan) {
    Map<String, Placed> places = plan.byStep();
    long[] values = new long[starts.length];
    boolean whole = true;
    for (int i = 0; i < starts.length; i++) {
      Placed placed = places.get(problem.steps().get(i).key());
      whole &= placed != null;
      if (placed != null) {
        values[i] = placed.startMin();
        model.addHint(starts[i], values[i]);
        String whom = placed.person();
        people.get(i).forEach((person, does) -> model.addHint(does, person.equals(whom)));
      }
    }
    if (whole) {
      hintFollowers(values);
    }
  }

  private void hintFollowers(long[] values) {
    for (Follower follower : followers) {
      model.addHint(follower.variable(), follower.fromStarts().applyAsLong(values));
    }
  }

  /** The plan of a solution, whose values are read by the function. */
  Plan plan(ToLongFunction<IntVar> value) {
    List<Placed> placed = new ArrayList<>();
    for (int i = 0; i < starts.length; i++) {
      int start = Math.toIntExact(value.applyAsLong(starts[i]));
      Step step = problem.steps().get(i);
      placed.add(new Placed(step.key(), start, start + step.minutes(), person(i, value)));
    }
    return new Plan(placed);
  }

  private @Nullable String person(int step, ToLongFunction<IntVar> value) {
    for (Map.Entry<String, BoolVar> choice : people.get(step).entrySet()) {
      if (value.applyAsLong(choice.getValue()) == 1) {
        return choice.getKey();
      }
    }
    return PeopleRules.onlyOne(problem, problem.steps().get(step));
  }
}

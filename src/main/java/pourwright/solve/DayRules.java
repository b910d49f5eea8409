package pourwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.util.Domain;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.plan.DayCount;
import pourwright.plan.PlanProblem;
import pourwright.plan.Step;
import pourwright.plan.StepKind;
import pourwright.plan.Window;

/**
 * Few days and short ones: which day each attended step falls on, which days are worked at all, and
 * from when to when. The sum is that of {@link DayCount}.
 */
final class DayRules {
  private static final class Day {
    private final long from;
    private long to;
    private final List<Integer> steps = new ArrayList<>();
    private final List<BoolVar> falls = new ArrayList<>();

    Day(Window window) {
      from = window.fromMin();
      to = window.toMin();
    }

    boolean holds(long minute) {
      return from <= minute && minute < to;
    }

    /** First begin and last end of the steps that fall on this day; its opening twice when none. */
    long[] span(long[] starts, PlanModel plan) {
      long first = Long.MAX_VALUE;
      long last = Long.MIN_VALUE;
      for (int step : steps) {
        if (holds(starts[step])) {
          first = Math.min(first, starts[step]);
          last = Math.max(last, starts[step] + plan.minutes(step));
        }
      }
      return last == Long.MIN_VALUE ? new long[] {from, from} : new long[] {first, last};
    }
  }

  private final PlanModel plan;
  private final Map<LocalDate, Day> days = new LinkedHashMap<>();
  private final LinearExprBuilder sum = LinearExpr.newBuilder();

  private DayRules(PlanModel plan) {
    this.plan = plan;
    for (Window window : plan.problem.presence()) {
      LocalDate date = plan.problem.clock(window.fromMin()).toLocalDate();
      Day day = days.computeIfAbsent(date, d -> new Day(window));
      day.to = Math.max(day.to, window.toMin());
    }
  }

  /** Adds the days to the model; gives the sum to keep small. */
  static LinearExprBuilder addTo(PlanModel plan) {
    DayRules rules = new DayRules(plan);
    List<Step> steps = plan.problem.steps();
    for (int i = 0; i < steps.size(); i++) {
      if (DayCount.attended(steps.get(i)) && plan.domain(i).max() >= 0) {
        rules.placeOnDays(i);
      }
    }
    rules.days.values().forEach(rules::addDay);
    return rules.sum;
  }

  private void placeOnDays(int step) {
    List<BoolVar> choice = new ArrayList<>();
    for (Map.Entry<LocalDate, Day> entry : days.entrySet()) {
      Day day = entry.getValue();
      Domain there = plan.domain(step).intersectionWith(new Domain(day.from, day.to - 1));
      if (!there.isEmpty()) {
        BoolVar falls = plan.model.newBoolVar("step " + step + " on " + entry.getKey());
        plan.model
            .addLinearConstraint(plan.starts[step], there.min(), there.max())
            .onlyEnforceIf(falls);
        plan.follows(falls, at -> day.holds(at[step]) ? 1 : 0);
        choice.add(falls);
        day.steps.add(step);
        day.falls.add(falls);
      }
    }
    plan.model.addExactlyOne(choice.toArray(new BoolVar[0]));
  }

  private void addDay(Day day) {
    if (day.steps.isEmpty()) {
      return;
    }
    BoolVar worked = plan.model.newBoolVar("worked from " + day.from);
    IntVar first = plan.model.newIntVar(day.from, day.to, "first " + day.from);
    IntVar last = plan.model.newIntVar(day.from, day.to, "last " + day.from);
    plan.follows(worked, at -> day.steps.stream().anyMatch(i -> day.holds(at[i])) ? 1 : 0);
    plan.follows(first, at -> day.span(at, plan)[0]);
    plan.follows(last, at -> day.span(at, plan)[1]);
    LinearExprBuilder work = LinearExpr.newBuilder();
    for (int s = 0; s < day.steps.size(); s++) {
      int step = day.steps.get(s);
      BoolVar falls = day.falls.get(s);
      LinearExpr end = LinearExpr.affine(plan.starts[step], 1, plan.minutes(step));
      plan.model.addLessOrEqual(first, plan.starts[step]).onlyEnforceIf(falls);
      plan.model.addGreaterOrEqual(last, end).onlyEnforceIf(falls);
      plan.model.addImplication(falls, worked);
      if (plan.problem.steps().get(step).kind() == StepKind.HANDS) {
        work.addTerm(falls, plan.minutes(step));
      }
    }
    LinearExpr length = LinearExpr.weightedSum(new IntVar[] {last, first}, new long[] {1, -1});
    long pairs = Math.max(1, plan.problem.people().size());
    // A day is at least as long as the work of its hands: what the relaxation would not see.
    plan.model.addGreaterOrEqual(
        LinearExpr.weightedSum(new IntVar[] {last, first}, new long[] {pairs, -pairs}), work);
    plan.model.addLessOrEqual(length, LinearExpr.affine(worked, day.to - day.from, 0));
    sum.add(length).addTerm(worked, DayCount.MINUTES_FOR_A_DAY);
  }

  /** True when anybody is ever needed. */
  static boolean applies(PlanProblem problem) {
    return problem.steps().stream().anyMatch(DayCount::attended);
  }
}

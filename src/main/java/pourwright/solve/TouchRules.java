package pourwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.plan.DayCount;
import pourwright.plan.Link;
import pourwright.plan.PlanProblem;
import pourwright.plan.Step;
import pourwright.plan.TouchCount;
import pourwright.plan.Window;

/**
 * Few touches and short days: a batch that is in hand on a day counts once for that day, and so
 * does the work past the day's seventh hour. The sum is that of {@link TouchCount}. Each step asks
 * only whether it shares its day with an earlier one of its batch, and whether it is late, so what
 * no plan can go below is seen batch by batch.
 */
final class TouchRules {
  private static final int DAY = 1440;

  private final PlanModel plan;
  private final PlanProblem problem;
  private final Map<Integer, IntVar> days = new HashMap<>();
  private final Map<String, List<Link>> linksFrom = new HashMap<>();
  private final List<Window> normal = new ArrayList<>();
  private final LinearExprBuilder sum = LinearExpr.newBuilder();

  /** First and last minute of a day, counted from its first midnight, over all days. */
  private final long from;

  private final long to;

  private TouchRules(PlanModel plan) {
    this.plan = plan;
    this.problem = plan.problem;
    for (Link link : problem.links()) {
      linksFrom.computeIfAbsent(link.before(), k -> new ArrayList<>()).add(link);
    }
    long first = Long.MAX_VALUE;
    long last = Long.MIN_VALUE;
    Map<LocalDate, Integer> openings = TouchCount.openings(problem);
    for (Window window : problem.presence()) {
      LocalDate date = problem.clock(window.fromMin()).toLocalDate();
      long midnight = (long) day(window.fromMin()) * DAY;
      first = Math.min(first, window.fromMin() - midnight);
      last = Math.max(last, window.toMin() - midnight);
      int end = openings.getOrDefault(date, window.fromMin()) + TouchCount.NORMAL_DAY_MIN;
      if (end > window.fromMin()) {
        normal.add(new Window(window.fromMin(), Math.min(window.toMin(), end)));
      }
    }
    from = first;
    to = last;
  }

  /** Days since the one the origin falls on. */
  private int day(long minute) {
    LocalDate first = problem.clock(0).toLocalDate();
    LocalDate date = problem.clock(Math.toIntExact(minute)).toLocalDate();
    return Math.toIntExact(date.toEpochDay() - first.toEpochDay());
  }

  /** Adds the touches to the model; gives the sum to keep small, null where it cannot be said. */
  static @Nullable LinearExprBuilder addTo(PlanModel plan) {
    if (plan.problem.presence().isEmpty()) {
      return null;
    }
    TouchRules rules = new TouchRules(plan);
    if (rules.to - rules.from >= DAY) {
      return null; // work through midnight: a start alone does not say which day it is
    }
    rules.batches().values().forEach(rules::addBatch);
    return rules.sum;
  }

  /** The attended steps of each batch that are still to be done, earlier ones first. */
  private Map<String, List<Integer>> batches() {
    Map<String, List<Integer>> batches = new LinkedHashMap<>();
    List<Step> steps = problem.steps();
    for (int i = 0; i < steps.size(); i++) {
      if (DayCount.attended(steps.get(i)) && plan.domain(i).max() >= 0) {
        batches.computeIfAbsent(steps.get(i).batch(), k -> new ArrayList<>()).add(i);
      }
    }
    batches
        .values()
        .forEach(b -> b.sort((i, j) -> Long.compare(plan.domain(i).min(), plan.domain(j).min())));
    return batches;
  }

  private void addBatch(List<Integer> batch) {
    for (int at = 0; at < batch.size(); at++) {
      int step = batch.get(at);
      List<Integer> before = new ArrayList<>(batch.subList(0, at));
      if (at > 0 && follows(batch.get(at - 1), step)) {
        before = List.of(batch.get(at - 1));
      }
      addTouch(step, before);
      addLate(step);
    }
  }

  /** A step is a touch of its own unless it shares its day with one before it. */
  private void addTouch(int step, List<Integer> before) {
    List<Literal> choice = new ArrayList<>();
    for (int earlier : before) {
      if (mayShare(earlier, step)) {
        BoolVar same = plan.model.newBoolVar("same day " + earlier + " " + step);
        plan.model.addEquality(dayOf(earlier), dayOf(step)).onlyEnforceIf(same);
        plan.follows(same, at -> day(at[earlier]) == day(at[step]) ? 1 : 0);
        choice.add(same);
      }
    }
    if (choice.isEmpty()) {
      sum.add(TouchCount.MINUTES_FOR_A_TOUCH);
      return;
    }
    BoolVar touch = plan.model.newBoolVar("touch " + step);
    plan.follows(
        touch,
        at ->
            before.stream().anyMatch(e -> mayShare(e, step) && day(at[e]) == day(at[step]))
                ? 0
                : 1);
    choice.add(touch);
    plan.model.addBoolOr(choice);
    sum.addTerm(touch, TouchCount.MINUTES_FOR_A_TOUCH);
  }

  private void addLate(int step) {
    int minutes = plan.minutes(step);
    Domain inTime = plan.domain(step).intersectionWith(early(minutes));
    if (minutes == 0 || inTime.size() == plan.domain(step).size()) {
      return;
    }
    if (inTime.isEmpty()) {
      sum.add(minutes);
      return;
    }
    BoolVar late = plan.model.newBoolVar("late in the day " + step);
    plan.model.addLinearExpressionInDomain(plan.starts[step], inTime).onlyEnforceIf(late.not());
    plan.follows(late, at -> inTime.contains(at[step]) ? 0 : 1);
    sum.addTerm(late, minutes);
  }

  /** Starts from which so many minutes end within the normal part of a day. */
  private Domain early(int minutes) {
    return StartTimes.within(normal, minutes, 0);
  }

  /** True when links within the batch put one step after another. */
  private boolean follows(int before, int after) {
    return reached(before).containsKey(problem.steps().get(after).key());
  }

  /** False when waits alone put the two on different days. */
  private boolean mayShare(int earlier, int later) {
    return reached(earlier).getOrDefault(problem.steps().get(later).key(), 0L) <= to - from;
  }

  /**
   * What the links within its batch put after a step, with the minutes from its start to theirs
   * that the links ask for; a day's length and one more stands for anything longer.
   */
  private Map<String, Long> reached(int step) {
    Step first = problem.steps().get(step);
    Map<String, Long> reached = new HashMap<>(Map.of(first.key(), 0L));
    Deque<String> open = new ArrayDeque<>(List.of(first.key()));
    while (!open.isEmpty()) {
      String next = open.pop();
      long there = reached.getOrDefault(next, 0L) + plan.minutes(plan.of(next));
      for (Link link : linksFrom.getOrDefault(next, List.of())) {
        long at = Math.min(there + link.minMin(), to - from + 1);
        Long known = reached.get(link.after());
        boolean ours = problem.steps().get(plan.of(link.after())).batch().equals(first.batch());
        if (ours && (known == null || known < at)) {
          reached.put(link.after(), at);
          open.push(link.after());
        }
      }
    }
    return reached;
  }

  private IntVar dayOf(int step) {
    return days.computeIfAbsent(
        step,
        s -> {
          long first = day(Math.max(0, plan.domain(s).min()));
          long last = day(plan.domain(s).max());
          IntVar day = plan.model.newIntVar(first, last, "day of " + s);
          plan.model.addLinearConstraint(
              LinearExpr.weightedSum(new IntVar[] {plan.starts[s], day}, new long[] {1, -DAY}),
              from,
              to);
          plan.follows(day, at -> day(at[s]));
          return day;
        });
  }
}

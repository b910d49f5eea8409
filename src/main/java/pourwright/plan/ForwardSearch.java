package pourwright.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * The forward rule in many orders of batches: from the order of least slack on, one batch is put
 * before or in place of another, and what keeps the dates better, or as well in fewer and shorter
 * days, stays. Stops after so many tries or when cancelled, and looks at no clock: the same seed
 * gives the same plan. It proves nothing but that a plan without a minute late is best.
 *
 * <p>Source of the idea, a search over lists that a schedule generation scheme lays out: S.
 * Hartmann, R. Kolisch, European Journal of Operational Research 127 (2000) 394-407; the moves are
 * our own.
 */
public final class ForwardSearch implements Planner {
  private final int tries;

  /** A search of so many orders. */
  public ForwardSearch(int tries) {
    this.tries = tries;
  }

  @Override
  public Outcome plan(PlanProblem problem, Effort effort) {
    Outcome first = new ForwardRule().plan(problem, effort);
    return first instanceof Planned planned ? new Run(problem, effort).improve(planned) : first;
  }

  /** What is kept small, in order. */
  private record Worth(long late, long touches, long days) implements Comparable<Worth> {
    @Override
    public int compareTo(Worth other) {
      return Comparator.comparingLong(Worth::late)
          .thenComparingLong(Worth::touches)
          .thenComparingLong(Worth::days)
          .compare(this, other);
    }

    boolean better(Worth other) {
      return compareTo(other) < 0;
    }
  }

  private final class Run {
    private final PlanProblem problem;
    private final Effort effort;
    private final Random random;
    private final BatchOrder order;
    private final Bench bench;
    private final Map<String, List<Goal>> goals = new HashMap<>();

    /**
     * What the bench holds now, batch by batch, with the state before each and its minutes late.
     */
    private final List<List<Step>> laid = new ArrayList<>();

    private final List<Bench.Mark> marks = new ArrayList<>();
    private final List<Long> late = new ArrayList<>();

    Run(PlanProblem problem, Effort effort) {
      this.problem = problem;
      this.effort = effort;
      this.random = new Random(effort.seed());
      this.order = new BatchOrder(problem);
      this.bench = new Bench(problem);
      for (Goal goal : problem.goals()) {
        goals.computeIfAbsent(goal.lastStep(), k -> new ArrayList<>()).add(goal);
      }
    }

    Outcome improve(Planned first) {
      Plan best = first.plan();
      Worth worth = worth(best);
      List<String> names = new ArrayList<>(order.groups().keySet());
      Map<String, Integer> slacks = order.slacks();
      names.sort((a, b) -> Integer.compare(slacks.getOrDefault(a, 0), slacks.getOrDefault(b, 0)));
      for (int t = 0; t < tries && names.size() > 1 && !effort.cancelled().getAsBoolean(); t++) {
        List<String> other = moved(names, lateGroups(best));
        Plan plan = lay(other, worth.late());
        Worth now = plan == null ? worth : worth(plan);
        if (plan != null && !worth.better(now)) {
          names = other;
          if (now.better(worth)) {
            effort.better().accept(plan);
          }
          best = plan;
          worth = now;
        }
      }
      return new Planned(best, 0, worth.late() == 0);
    }

    private Worth worth(Plan plan) {
      return new Worth(
          plan.tardiness(problem),
          TouchCount.of(problem, plan).sum(),
          DayCount.of(problem, plan).sum());
    }

    /** Groups on whose end a late goal hangs; all of them when nothing is late. */
    private List<String> lateGroups(Plan plan) {
      Map<String, Placed> places = plan.byStep();
      Map<String, String> groupOf = new HashMap<>();
      order.groups().forEach((name, steps) -> steps.forEach(s -> groupOf.put(s.key(), name)));
      List<String> late = new ArrayList<>();
      for (Goal goal : problem.goals()) {
        Placed last = places.get(goal.lastStep());
        String group = groupOf.get(goal.lastStep());
        if (last != null && group != null && last.endMin() > goal.dueMin()) {
          late.add(group);
          late.addAll(order.waitedFor(group));
        }
      }
      return late.isEmpty() ? List.copyOf(order.groups().keySet()) : late;
    }

    /** One batch, mostly one that is late, nearer to the front or in the place of another. */
    private List<String> moved(List<String> names, List<String> late) {
      List<String> other = new ArrayList<>(names);
      int from = other.indexOf(late.get(random.nextInt(late.size())));
      int to = random.nextInt(other.size());
      if (random.nextInt(3) == 0) {
        Collections.swap(other, from, to);
      } else {
        int near = Math.max(0, from - 1 - random.nextInt(Math.max(1, from)));
        String name = other.remove(from);
        other.add(random.nextBoolean() ? near : Math.min(to, other.size()), name);
      }
      return other;
    }

    /** Lays the batches out from the first that differs on; null once it is later than allowed. */
    private @Nullable Plan lay(List<String> names, long most) {
      Map<String, Integer> ranks = new HashMap<>();
      names.forEach(name -> ranks.put(name, ranks.size()));
      List<List<Step>> batches = order.batches(ranks);
      int same = 0;
      while (same < laid.size() && laid.get(same) == batches.get(same)) {
        same++;
      }
      if (same < laid.size()) {
        bench.backTo(marks.get(same));
        laid.subList(same, laid.size()).clear();
        marks.subList(same, marks.size()).clear();
        late.subList(same, late.size()).clear();
      }
      for (List<Step> batch : batches.subList(same, batches.size())) {
        long before = late.isEmpty() ? 0 : late.get(late.size() - 1);
        Bench.Mark mark = bench.mark();
        if (!new BatchPlacing(problem, bench, batch).place().isEmpty()) {
          bench.backTo(mark);
          return null;
        }
        laid.add(batch);
        marks.add(mark);
        late.add(before + minutesLate(batch));
        if (before + minutesLate(batch) > most) {
          return null;
        }
      }
      return new Plan(bench.placed());
    }

    private long minutesLate(List<Step> batch) {
      long sum = 0;
      for (Step step : batch) {
        for (Goal goal : goals.getOrDefault(step.key(), List.of())) {
          Placed placed = bench.of(step.key());
          int end = placed == null ? problem.horizonMin() : placed.endMin();
          sum += (long) goal.weight() * Math.max(0, end - goal.dueMin());
        }
      }
      return sum;
    }
  }
}

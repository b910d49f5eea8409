package pourwright.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Closes day after day, those with the least work first, and lays the steps anew by the forward
 * rule: a day stays closed when nothing is later, nothing is touched more often, and days and their
 * length together are less. Looks at no clock; it ends when no day can be closed, or when told to.
 */
public final class FewerDays {
  private final PlanProblem problem;
  private final PlanProblem way;
  private final Set<LocalDate> closed = new HashSet<>();
  private final List<List<Step>> batches;
  private final Map<String, List<Goal>> goals = new HashMap<>();

  /**
   * Fewer days for a problem.
   *
   * @param way the same steps with rules that are at least as strict, by which they are laid
   */
  public FewerDays(PlanProblem problem, PlanProblem way) {
    this.problem = problem;
    this.way = way;
    this.batches = new BatchOrder(way).batches();
    for (Goal goal : way.goals()) {
      goals.computeIfAbsent(goal.lastStep(), k -> new ArrayList<>()).add(goal);
    }
  }

  /** A plan on fewer days, or the one there was; {@code over} says when to stop looking. */
  public Plan from(Plan start, BooleanSupplier over) {
    Plan best = start;
    Set<LocalDate> tried = new HashSet<>();
    while (!over.getAsBoolean()) {
      List<LocalDate> days = byWork(best);
      days.removeAll(tried);
      if (days.isEmpty()) {
        return best;
      }
      LocalDate day = days.get(0);
      tried.add(day);
      closed.add(day);
      Plan laid = lay(best.tardiness(problem));
      if (laid != null && better(laid, best)) {
        best = laid;
        tried.clear();
      } else {
        closed.remove(day);
      }
    }
    return best;
  }

  /** All batches on the days that are open; null once they are later than allowed. */
  private @Nullable Plan lay(long most) {
    PlanProblem open = open();
    Bench bench = new Bench(open);
    long late = 0;
    for (List<Step> batch : batches) {
      if (!new BatchPlacing(open, bench, batch).place().isEmpty()) {
        return null;
      }
      for (Step step : batch) {
        for (Goal goal : goals.getOrDefault(step.key(), List.of())) {
          Placed placed = bench.of(step.key());
          int end = placed == null ? open.horizonMin() : placed.endMin();
          late += (long) goal.weight() * Math.max(0, end - goal.dueMin());
        }
      }
      if (late > most) {
        return null;
      }
    }
    return new Plan(bench.placed());
  }

  private boolean better(Plan plan, Plan than) {
    return plan.tardiness(problem) <= than.tardiness(problem)
        && TouchCount.of(problem, plan).sum() <= TouchCount.of(problem, than).sum()
        && DayCount.of(problem, plan).sum() < DayCount.of(problem, than).sum();
  }

  /** Days on which somebody is needed, those with the least work first. */
  private List<LocalDate> byWork(Plan plan) {
    Map<String, Step> steps = problem.stepsByKey();
    Map<LocalDate, Integer> work = new HashMap<>();
    for (Placed placed : plan.placed()) {
      Step step = steps.get(placed.step());
      if (step != null && DayCount.attended(step) && placed.startMin() >= 0) {
        work.merge(problem.clock(placed.startMin()).toLocalDate(), step.minutes(), Integer::sum);
      }
    }
    List<LocalDate> days = new ArrayList<>(work.keySet());
    days.sort(
        Comparator.comparing((LocalDate day) -> work.getOrDefault(day, 0))
            .thenComparing(Comparator.naturalOrder()));
    return days;
  }

  private PlanProblem open() {
    return new PlanProblem(
        way.origin(),
        way.zone(),
        way.horizonMin(),
        way.resources().stream().map(this::open).toList(),
        way.steps(),
        way.links(),
        way.spans(),
        way.goals(),
        way.apart(),
        way.washings(),
        way.lastHotStartMin());
  }

  private Resource open(Resource resource) {
    if (resource.kind() != Resource.Kind.PERSON) {
      return resource;
    }
    List<Window> windows =
        resource.windows().stream()
            .filter(w -> !closed.contains(way.clock(w.fromMin()).toLocalDate()))
            .toList();
    return Resource.person(resource.key(), resource.words(), windows);
  }
}

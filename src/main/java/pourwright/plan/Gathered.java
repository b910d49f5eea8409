package pourwright.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A problem made stricter so that its plans have few touches and short days: what may share a day
 * with the step of its batch before it must do so, and nobody works past the seventh hour. A plan
 * of the stricter problem is one of the problem itself. Also says how few touches waits alone
 * allow.
 */
public final class Gathered {
  private static final int DAY = 1440;

  private final PlanProblem problem;
  private final Map<String, Step> steps;
  private final Map<String, List<Link>> into = new HashMap<>();
  private final Map<LocalDate, Integer> openings;
  private final Map<String, List<Step>> batches = new LinkedHashMap<>();

  /** The longest day from the first opening to the last closing. */
  private final int longest;

  private Gathered(PlanProblem problem) {
    this.problem = problem;
    this.steps = problem.stepsByKey();
    this.openings = TouchCount.openings(problem);
    problem.links().forEach(l -> into.computeIfAbsent(l.after(), k -> new ArrayList<>()).add(l));
    int most = 0;
    for (Window window : problem.presence()) {
      most = Math.max(most, window.toMin() - opening(window.fromMin()));
    }
    this.longest = most;
    for (Step step : problem.steps()) {
      if (counts(step)) {
        batches.computeIfAbsent(step.batch(), k -> new ArrayList<>()).add(step);
      }
    }
  }

  private int opening(int minute) {
    return openings.getOrDefault(problem.clock(minute).toLocalDate(), minute);
  }

  /** What a plan's {@link TouchCount#sum()} cannot go below, by the waits of each batch alone. */
  public static long least(PlanProblem problem) {
    return new Gathered(problem).leastSum();
  }

  private static boolean counts(Step step) {
    return DayCount.attended(step) && !step.begun();
  }

  private long leastSum() {
    long sum = 0;
    for (List<Step> batch : batches.values()) {
      sum += inOneRow(batch) ? leastSum(batch) : TouchCount.minutesFor(leastUnordered(batch));
    }
    return sum;
  }

  /** True when each step of a batch comes after the one before it. */
  private boolean inOneRow(List<Step> batch) {
    for (int i = 1; i < batch.size(); i++) {
      if (between(batch.get(i - 1), batch.get(i)) < 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * What a row of steps cannot go below, over all ways to cut it into days: a touch for each day,
   * and the steps that waits alone push past the seventh hour of a day begun with the opening.
   */
  private long leastSum(List<Step> row) {
    long[] least = new long[row.size() + 1];
    for (int from = row.size() - 1; from >= 0; from--) {
      least[from] = Long.MAX_VALUE;
      long day = TouchCount.MINUTES_FOR_A_TOUCH;
      int used = 0;
      for (int to = from; to < row.size(); to++) {
        int wait = to == from ? 0 : between(row.get(to - 1), row.get(to));
        used += wait + row.get(to).minutes();
        day += used > TouchCount.NORMAL_DAY_MIN ? row.get(to).minutes() : 0;
        if (used > longest && to > from) {
          break;
        }
        least[from] = Math.min(least[from], day + least[to + 1]);
      }
    }
    return least[0];
  }

  /** A row of steps in as few days of a length as waits alone allow, the first ones full. */
  private List<List<Step>> days(List<Step> row, int length) {
    List<List<Step>> days = new ArrayList<>();
    int used = 0;
    for (int i = 0; i < row.size(); i++) {
      Step step = row.get(i);
      used += step.minutes() + (i == 0 ? 0 : between(row.get(i - 1), step));
      if (i == 0 || used > length) {
        days.add(new ArrayList<>());
        used = step.minutes();
      }
      days.get(days.size() - 1).add(step);
    }
    return days;
  }

  /** Steps of which no two can share a day: each is a touch of its own. */
  private int leastUnordered(List<Step> batch) {
    int touches = 0;
    for (Step step : batch) {
      boolean alone = true;
      for (Step other : batch) {
        boolean later = other.equals(step) || between(step, other) >= 0;
        int both = step.minutes() + other.minutes();
        alone &= later || between(other, step) + both > longest;
      }
      touches += alone ? 1 : 0;
    }
    return touches;
  }

  /** Least minutes from the end of one step to the start of another; -1 where no links say. */
  private int between(Step from, Step to) {
    int most = -1;
    for (Link link : into.getOrDefault(to.key(), List.of())) {
      Step before = step(link.before());
      if (before.key().equals(from.key())) {
        most = Math.max(most, link.minMin());
      } else if (before.batch().equals(from.batch())) {
        int there = between(from, before);
        most = there < 0 ? most : Math.max(most, there + before.minutes() + link.minMin());
      }
    }
    return most;
  }

  private Step step(String key) {
    return java.util.Objects.requireNonNull(steps.get(key));
  }

  /** The stricter problem; what is pinned stays where it is, late or not. */
  public static PlanProblem of(PlanProblem problem) {
    return new Gathered(problem).stricter();
  }

  private PlanProblem stricter() {
    Set<String> shared = shared();
    List<Link> links = new ArrayList<>();
    for (Link link : problem.links()) {
      links.add(shared.contains(link.after()) ? tied(link) : link);
    }
    return new PlanProblem(
        problem.origin(),
        problem.zone(),
        problem.horizonMin(),
        problem.resources().stream().map(this::shorter).toList(),
        problem.steps(),
        links,
        problem.spans(),
        problem.goals(),
        problem.apart(),
        problem.washings(),
        problem.lastHotStartMin());
  }

  /** Steps that are to share the day of the one before them in their batch. */
  private Set<String> shared() {
    Set<String> shared = new HashSet<>();
    for (List<Step> batch : batches.values()) {
      if (inOneRow(batch)) {
        for (List<Step> day : days(batch, Math.min(longest, TouchCount.NORMAL_DAY_MIN))) {
          day.subList(1, day.size()).forEach(s -> shared.add(s.key()));
        }
      }
    }
    return shared;
  }

  /** The link with a greatest wait that does not reach over a night. */
  private Link tied(Link link) {
    int passed = 0;
    Link back = link;
    while (!DayCount.attended(step(back.before()))) {
      List<Link> earlier = into.getOrDefault(back.before(), List.of());
      if (earlier.size() != 1) {
        return link;
      }
      passed += step(back.before()).minutes() + back.minMin();
      back = earlier.get(0);
    }
    int most = DAY - longest - 1 - passed;
    Step before = step(back.before());
    Step after = step(link.after());
    boolean other = !before.batch().equals(after.batch());
    boolean pinned = before.fixedStartMin() != null || after.fixedStartMin() != null;
    return other
            || pinned
            || most < link.minMin()
            || (link.maxMin() != null && link.maxMin() <= most)
        ? link
        : new Link(link.before(), link.after(), link.minMin(), most, link.reason());
  }

  private Resource shorter(Resource resource) {
    if (resource.kind() != Resource.Kind.PERSON) {
      return resource;
    }
    List<Window> windows = new ArrayList<>();
    for (Window window : resource.windows()) {
      int end = Math.min(window.toMin(), opening(window.fromMin()) + TouchCount.NORMAL_DAY_MIN);
      if (end > window.fromMin()) {
        windows.add(new Window(window.fromMin(), end));
      }
    }
    return Resource.person(resource.key(), resource.words(), windows);
  }
}

package pourwright.solve;

import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pourwright.plan.Link;
import pourwright.plan.PlanProblem;
import pourwright.plan.Resource;
import pourwright.plan.Step;
import pourwright.plan.StepKind;
import pourwright.plan.Window;

/**
 * When each step may begin, by hours of people and things, by its own earliest minute, and by the
 * links to other steps. A step that was begun before the origin stands where it stands.
 */
final class StartTimes {
  private final PlanProblem problem;
  private final Map<String, Resource> resources;
  private final List<Window> presence;
  private final Domain[] domains;

  private StartTimes(PlanProblem problem) {
    this.problem = problem;
    this.resources = problem.resourcesByKey();
    this.presence = problem.presence();
    List<Step> steps = problem.steps();
    domains = new Domain[steps.size()];
    Map<List<Object>, Domain> known = new HashMap<>();
    for (int i = 0; i < domains.length; i++) {
      domains[i] = ofStep(steps.get(i), known);
    }
    tighten();
  }

  /** The possible starts of every step, in the order of the problem. Empty: the step cannot be. */
  static Domain[] of(PlanProblem problem) {
    return new StartTimes(problem).domains;
  }

  private Domain ofStep(Step step, Map<List<Object>, Domain> known) {
    Integer fixed = step.fixedStartMin();
    if (fixed != null && fixed < 0) {
      return new Domain(fixed);
    }
    int from = fixed == null ? Math.max(0, step.earliestMin()) : fixed;
    int to = problem.horizonMin() - step.minutes();
    Domain range = fixed == null ? new Domain(from, to) : new Domain(fixed);
    List<Object> alike =
        List.of(step.kind(), step.minutes(), step.people(), step.uses().keySet(), step.hot());
    return range.intersectionWith(known.computeIfAbsent(alike, k -> byHours(step)));
  }

  private Domain byHours(Step step) {
    Domain hours = new Domain(Integer.MIN_VALUE, Integer.MAX_VALUE);
    if (step.kind() == StepKind.HANDS) {
      Domain hands = new Domain(1, 0);
      for (Resource person : candidates(problem, step)) {
        hands = hands.unionWith(within(person.windows(), step.minutes(), 0));
      }
      hours = hours.intersectionWith(hands);
    }
    if (step.kind() == StepKind.WATCH) {
      hours = hours.intersectionWith(within(presence, step.minutes(), 0));
    }
    if (step.hot()) {
      hours = hours.intersectionWith(within(presence, step.minutes(), problem.lastHotStartMin()));
    }
    for (String key : step.uses().keySet()) {
      Resource thing = resources.get(key);
      if (thing != null && !thing.windows().isEmpty()) {
        hours = hours.intersectionWith(within(thing.windows(), step.minutes(), 0));
      }
    }
    return hours;
  }

  /** The people who may do a step. */
  static List<Resource> candidates(PlanProblem problem, Step step) {
    return problem.people().stream()
        .filter(p -> step.people().isEmpty() || step.people().contains(p.key()))
        .toList();
  }

  /**
   * Starts for which the step lies in one window and does not begin in the window's last minutes.
   */
  static Domain within(List<Window> windows, int minutes, int notInTheLast) {
    List<long[]> starts = new ArrayList<>();
    for (Window window : windows) {
      long last = window.toMin() - (long) Math.max(minutes, notInTheLast);
      if (last >= window.fromMin()) {
        starts.add(new long[] {window.fromMin(), last});
      }
    }
    return starts.isEmpty()
        ? new Domain(1, 0)
        : Domain.fromIntervals(starts.toArray(new long[0][]));
  }

  /** Longest paths over the links, both ways; stops when nothing moves or a step has no place. */
  private void tighten() {
    List<Step> steps = problem.steps();
    Map<String, Integer> index = index(problem);
    int[][] links = new int[problem.links().size()][];
    for (int i = 0; i < links.length; i++) {
      Link link = problem.links().get(i);
      int before = index.getOrDefault(link.before(), 0);
      int length = steps.get(before).minutes();
      int most = link.maxMin() == null ? Integer.MAX_VALUE : length + link.maxMin();
      links[i] =
          new int[] {before, index.getOrDefault(link.after(), 0), length + link.minMin(), most};
    }
    boolean moved = true;
    for (int round = 0; moved && round <= steps.size(); round++) {
      moved = false;
      for (int[] link : links) {
        moved |= tighten(link);
      }
    }
  }

  private boolean tighten(int[] link) {
    Domain before = domains[link[0]];
    Domain after = domains[link[1]];
    boolean history = before.max() < 0 && after.max() < 0;
    if (before.isEmpty() || after.isEmpty() || history) {
      return false;
    }
    long most = link[3] == Integer.MAX_VALUE ? Integer.MAX_VALUE : before.max() + link[3];
    long least = link[3] == Integer.MAX_VALUE ? Integer.MIN_VALUE : after.min() - link[3];
    boolean narrows = after.min() < before.min() + link[2] || after.max() > most;
    boolean narrowsBack = before.max() > after.max() - link[2] || before.min() < least;
    if (narrows) {
      domains[link[1]] = narrowed(after, before.min() + link[2], most);
    }
    if (narrowsBack) {
      domains[link[0]] = narrowed(before, least, after.max() - link[2]);
    }
    return narrows || narrowsBack;
  }

  private static Domain narrowed(Domain domain, long from, long to) {
    return from > to ? new Domain(1, 0) : domain.intersectionWith(new Domain(from, to));
  }

  /** Index of each step by key. */
  static Map<String, Integer> index(PlanProblem problem) {
    Map<String, Integer> index = new HashMap<>();
    for (Step step : problem.steps()) {
      index.put(step.key(), index.size());
    }
    return index;
  }

  /** True when some step has no possible start. */
  static boolean impossible(Domain[] domains) {
    return Arrays.stream(domains).anyMatch(Domain::isEmpty);
  }
}

package pourwright.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order in which batches are placed: none before those it waits for, else the one whose latest
 * start, counted back from the dates to keep, is earliest. Batches tied by a maximum wait are
 * placed as one.
 */
final class BatchOrder {
  private static final int NEVER = Integer.MAX_VALUE / 4;

  private final PlanProblem problem;
  private final Map<String, Step> steps;
  private final Map<String, List<Link>> after = new HashMap<>();
  private final Map<String, List<Link>> before = new HashMap<>();
  private final Map<String, Integer> latest = new HashMap<>();
  private final Map<String, String> group = new HashMap<>();
  private final Map<String, List<Step>> members = new LinkedHashMap<>();
  private final Map<String, Set<String>> waitsFor = new HashMap<>();

  BatchOrder(PlanProblem problem) {
    this.problem = problem;
    this.steps = problem.stepsByKey();
    for (Link link : problem.links()) {
      after.computeIfAbsent(link.before(), k -> new ArrayList<>()).add(link);
      before.computeIfAbsent(link.after(), k -> new ArrayList<>()).add(link);
    }
    problem.steps().forEach(s -> group.put(s.batch(), s.batch()));
    for (Link link : problem.links()) {
      if (link.maxMin() != null) {
        join(batch(link.before()), batch(link.after()));
      }
    }
    for (Span span : problem.spans()) {
      join(batch(span.fromStep()), batch(span.toStep()));
    }
  }

  private String batch(String step) {
    return step(step).batch();
  }

  private Step step(String key) {
    return java.util.Objects.requireNonNull(steps.get(key));
  }

  private String root(String batch) {
    String parent = group.getOrDefault(batch, batch);
    return parent.equals(batch) ? batch : root(parent);
  }

  private void join(String one, String other) {
    group.put(root(other), root(one));
  }

  /** What is placed as one, by name; the steps of each in an order that keeps the links. */
  Map<String, List<Step>> groups() {
    if (members.isEmpty()) {
      for (Step step : inOrder()) {
        members.computeIfAbsent(root(step.batch()), k -> new ArrayList<>()).add(step);
      }
      members.keySet().forEach(name -> waitsFor.put(name, earlier(name)));
    }
    return members;
  }

  /** For each group how soon it must begin; the least first. */
  Map<String, Integer> slacks() {
    deadlines();
    Map<String, Integer> slacks = new LinkedHashMap<>();
    groups().keySet().forEach(name -> slacks.put(name, slack(groups(), name)));
    return slacks;
  }

  /** The batches in order of their slack, the steps of each in an order that keeps the links. */
  List<List<Step>> batches() {
    return batches(slacks());
  }

  /** The batches, none before those it waits for, else the one with the least rank first. */
  List<List<Step>> batches(Map<String, Integer> ranks) {
    List<List<Step>> ordered = new ArrayList<>();
    Set<String> done = new HashSet<>();
    Map<String, List<Step>> open = new LinkedHashMap<>(groups());
    while (!open.isEmpty()) {
      String next = null;
      for (String name : open.keySet()) {
        boolean ready = done.containsAll(waitsFor.getOrDefault(name, Set.of()));
        if (ready && (next == null || rank(ranks, name) < rank(ranks, next))) {
          next = name;
        }
      }
      if (next == null) {
        // batches that wait for each other are placed as one
        List<Step> rest = new ArrayList<>();
        inOrder().stream().filter(s -> open.containsKey(root(s.batch()))).forEach(rest::add);
        ordered.add(rest);
        return ordered;
      }
      ordered.add(java.util.Objects.requireNonNull(open.remove(next)));
      done.add(next);
    }
    return ordered;
  }

  /** The groups that must be done before one. */
  Set<String> waitedFor(String name) {
    groups();
    return waitsFor.getOrDefault(name, Set.of());
  }

  /** What stands already comes first, wax that is molten before all: the rest is laid round it. */
  private int rank(Map<String, Integer> ranks, String name) {
    List<Step> steps = members.getOrDefault(name, List.of());
    boolean stands = steps.stream().anyMatch(s -> s.fixedStartMin() != null);
    boolean molten = steps.stream().anyMatch(s -> s.begun() && s.hot());
    return ranks.getOrDefault(name, NEVER) - (molten ? 3 * NEVER : stands ? 2 * NEVER : 0);
  }

  private int slack(Map<String, List<Step>> members, String name) {
    return members.getOrDefault(name, List.of()).stream()
        .mapToInt(s -> latest.getOrDefault(s.key(), NEVER))
        .min()
        .orElse(NEVER);
  }

  private Set<String> earlier(String name) {
    Set<String> earlier = new HashSet<>();
    for (Step step : members.getOrDefault(name, List.of())) {
      for (Link link : before.getOrDefault(step.key(), List.of())) {
        String other = root(batch(link.before()));
        if (!other.equals(name)) {
          earlier.add(other);
        }
      }
    }
    return earlier;
  }

  /** Latest start of each step for every goal that hangs on it, as if nothing else were planned. */
  private void deadlines() {
    List<Step> backwards = new ArrayList<>(inOrder());
    java.util.Collections.reverse(backwards);
    for (Goal goal : problem.goals()) {
      latest.merge(goal.lastStep(), goal.dueMin() - step(goal.lastStep()).minutes(), Math::min);
    }
    for (Step step : backwards) {
      for (Link link : after.getOrDefault(step.key(), List.of())) {
        int next = latest.getOrDefault(link.after(), NEVER);
        if (next < NEVER) {
          latest.merge(step.key(), next - link.minMin() - step.minutes(), Math::min);
        }
      }
    }
  }

  /** All steps, none before those it is linked after; links in a circle keep the given order. */
  private List<Step> inOrder() {
    List<Step> ordered = new ArrayList<>();
    Set<String> placed = new HashSet<>();
    List<Step> left = new ArrayList<>(problem.steps());
    while (!left.isEmpty()) {
      List<Step> next = new ArrayList<>();
      for (Step step : left) {
        boolean free =
            before.getOrDefault(step.key(), List.of()).stream()
                .allMatch(l -> placed.contains(l.before()));
        if (free) {
          ordered.add(step);
          placed.add(step.key());
        } else {
          next.add(step);
        }
      }
      if (next.size() == left.size()) {
        ordered.addAll(next);
        return ordered;
      }
      left = next;
    }
    return ordered;
  }
}

package pourwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;

/**
 * Says what a plan breaks, minute by minute. Shares no code with any planner: it lays the plan on a
 * row of minutes and counts.
 */
public final class PlanChecker {
  /**
   * One rule broken.
   *
   * @param rule short name: missing, moved, length, hands, hours, hot, thing, wait, apart, washing,
   *     horizon
   * @param sentence what is wrong, with clock times
   */
  public record Finding(String rule, String sentence) {}

  private final PlanProblem problem;
  private final Map<String, Placed> at = new TreeMap<>();
  private final Map<String, Step> steps;
  private final Map<String, Resource> resources;
  private final List<Finding> found = new ArrayList<>();
  private final int minutes;

  private PlanChecker(PlanProblem problem) {
    this.problem = problem;
    this.steps = problem.stepsByKey();
    this.resources = problem.resourcesByKey();
    this.minutes = problem.horizonMin() + 1;
  }

  /** Everything a plan breaks; empty when it keeps every rule. */
  public static List<Finding> check(PlanProblem problem, Plan plan) {
    PlanChecker checker = new PlanChecker(problem);
    if (checker.everyStepOnce(plan)) {
      checker.lengths();
      checker.people();
      checker.hours();
      checker.things();
      checker.waits();
      checker.apart();
      checker.washing();
    }
    return List.copyOf(checker.found);
  }

  private void say(String rule, String sentence) {
    found.add(new Finding(rule, sentence));
  }

  private String clock(int minute) {
    return problem.clock(minute).toLocalDateTime().toString().replace('T', ' ');
  }

  private Step step(String key) {
    return Objects.requireNonNull(steps.get(key));
  }

  private Placed place(String key) {
    return Objects.requireNonNull(at.get(key));
  }

  private boolean everyStepOnce(Plan plan) {
    for (Placed p : plan.placed()) {
      if (!steps.containsKey(p.step())) {
        say("missing", "the plan holds a step that is not asked for: " + p.step());
      } else if (at.put(p.step(), p) != null) {
        say("missing", step(p.step()).words() + " is planned twice");
      }
    }
    for (Step step : problem.steps()) {
      if (!at.containsKey(step.key())) {
        say("missing", step.words() + " is not planned");
      }
    }
    return found.isEmpty();
  }

  private void lengths() {
    for (Step step : problem.steps()) {
      Placed p = place(step.key());
      if (p.endMin() - p.startMin() != step.minutes()) {
        say(
            "length",
            step.words()
                + " takes "
                + step.minutes()
                + " minutes, not "
                + (p.endMin() - p.startMin()));
      }
      if (p.endMin() > problem.horizonMin() || (p.startMin() < 0 && step.fixedStartMin() == null)) {
        say("horizon", step.words() + " is outside the time that is planned");
      }
      if (step.fixedStartMin() != null && step.fixedStartMin() != p.startMin()) {
        say("moved", step.words() + " has begun at another time already");
      }
      if (step.fixedStartMin() == null && p.startMin() < step.earliestMin()) {
        say("wait", step.words() + " begins before it can, at " + clock(p.startMin()));
      }
    }
  }

  private BitSet hoursOf(Resource resource) {
    BitSet open = new BitSet(minutes);
    if (resource.windows().isEmpty() && resource.kind() != Resource.Kind.PERSON) {
      open.set(0, minutes + 1);
    }
    resource
        .windows()
        .forEach(w -> open.set(clamp(w.fromMin()), Math.max(clamp(w.fromMin()), clamp(w.toMin()))));
    return open;
  }

  private int clamp(int minute) {
    return Math.max(0, Math.min(minute, minutes));
  }

  private static boolean covers(BitSet open, int from, int to) {
    return from >= 0 && open.nextClearBit(from) >= to;
  }

  private void people() {
    for (Step step : problem.steps()) {
      Placed p = place(step.key());
      if (step.kind() != StepKind.HANDS) {
        if (p.person() != null) {
          say("hands", step.words() + " needs nobody's hands");
        }
        continue;
      }
      Resource person = p.person() == null ? null : resources.get(p.person());
      if (person == null || person.kind() != Resource.Kind.PERSON) {
        say("hands", step.words() + " has nobody to do it");
      } else if (!step.people().isEmpty() && !step.people().contains(person.key())) {
        say("hands", step.words() + " is not for " + person.words());
      }
    }
    for (Resource person : problem.people()) {
      busyOnce(person);
    }
  }

  private void busyOnce(Resource person) {
    BitSet busy = new BitSet(minutes);
    BitSet hours = hoursOf(person);
    for (Step step : problem.steps()) {
      Placed p = place(step.key());
      if (!person.key().equals(p.person()) || step.begun()) {
        continue;
      }
      int next = busy.nextSetBit(clamp(p.startMin()));
      if (next >= 0 && next < p.endMin()) {
        say("hands", person.words() + " has two things in hand at " + clock(next));
      }
      busy.set(clamp(p.startMin()), clamp(p.endMin()));
      if (!covers(hours, p.startMin(), p.endMin())) {
        say(
            "hours",
            step.words()
                + " is outside the hours of "
                + person.words()
                + ", at "
                + clock(p.startMin()));
      }
    }
  }

  private void hours() {
    BitSet somebody = new BitSet(minutes);
    problem.people().forEach(person -> somebody.or(hoursOf(person)));
    for (Step step : problem.steps()) {
      Placed p = place(step.key());
      if (step.begun() || (step.kind() == StepKind.WAIT && !step.hot())) {
        continue;
      }
      boolean watched = covers(somebody, p.startMin(), p.endMin());
      if (!watched && step.hot()) {
        say("hot", step.words() + " is hot or lit with nobody there, from " + clock(p.startMin()));
      } else if (!watched && step.kind() == StepKind.WATCH) {
        say("hours", step.words() + " has nobody to watch it, from " + clock(p.startMin()));
      }
      if (step.hot()
          && watched
          && !covers(somebody, p.startMin(), p.startMin() + problem.lastHotStartMin())) {
        say(
            "hot",
            step.words()
                + " begins in the last "
                + problem.lastHotStartMin()
                + " minutes, at "
                + clock(p.startMin()));
      }
    }
  }

  private void things() {
    for (Resource resource : problem.resources()) {
      if (resource.kind() == Resource.Kind.PERSON) {
        continue;
      }
      int[] used = new int[minutes + 2];
      BitSet open = hoursOf(resource);
      for (Step step : problem.steps()) {
        Integer amount = step.uses().get(resource.key());
        if (amount != null) {
          Placed p = place(step.key());
          add(used, p.startMin(), p.endMin(), amount);
          if (!step.begun() && !covers(open, p.startMin(), p.endMin())) {
            say("thing", resource.words() + " is not there for " + step.words());
          }
        }
      }
      for (Span span : problem.spans()) {
        if (span.resource().equals(resource.key())) {
          add(
              used,
              place(span.fromStep()).startMin(),
              place(span.toStep()).endMin(),
              span.amount());
        }
      }
      for (int minute = 0; minute < minutes; minute++) {
        if (used[minute] > resource.capacity()) {
          say(
              "thing",
              used[minute]
                  + " of "
                  + resource.words()
                  + " are needed at "
                  + clock(minute)
                  + "; there are "
                  + resource.capacity());
          break;
        }
      }
    }
  }

  private void add(int[] used, int from, int to, int amount) {
    for (int minute = clamp(from); minute < clamp(to); minute++) {
      used[minute] += amount;
    }
  }

  private void waits() {
    for (Link link : problem.links()) {
      if (step(link.before()).begun() && step(link.after()).begun()) {
        continue;
      }
      int gap = place(link.after()).startMin() - place(link.before()).endMin();
      if (gap < link.minMin() || (link.maxMin() != null && gap > link.maxMin())) {
        say(
            "wait",
            step(link.after()).words()
                + " comes "
                + gap
                + " minutes after "
                + step(link.before()).words()
                + ": "
                + link.reason());
      }
    }
  }

  private void apart() {
    for (Apart rule : problem.apart()) {
      List<Placed> ones = tagged(rule.tag());
      List<Placed> others = tagged(rule.otherTag());
      for (Placed one : ones) {
        for (Placed other : others) {
          boolean twice =
              rule.tag().equals(rule.otherTag()) && one.step().compareTo(other.step()) > 0;
          if (!one.step().equals(other.step()) && !twice && overlap(one, other)) {
            say(
                "apart",
                step(one.step()).words()
                    + " meets "
                    + step(other.step()).words()
                    + ": "
                    + rule.reason());
          }
        }
      }
    }
  }

  private List<Placed> tagged(String tag) {
    return at.values().stream().filter(p -> step(p.step()).tags().contains(tag)).toList();
  }

  private static boolean overlap(Placed one, Placed other) {
    return Math.max(one.startMin(), other.startMin()) < Math.min(one.endMin(), other.endMin());
  }

  private void washing() {
    for (Washing rule : problem.washings()) {
      Placed[] users =
          at.values().stream()
              .filter(p -> step(p.step()).uses().containsKey(rule.resource()))
              .toArray(Placed[]::new);
      Arrays.sort(users, (a, b) -> Integer.compare(a.startMin(), b.startMin()));
      for (int i = 1; i < users.length; i++) {
        Set<String> families = new java.util.HashSet<>();
        families.add(Objects.toString(step(users[i - 1].step()).family(), ""));
        families.add(Objects.toString(step(users[i].step()).family(), ""));
        int gap = users[i].startMin() - users[i - 1].endMin();
        if (families.size() > 1 && gap < rule.minutes()) {
          say("washing", "no time to wash before " + step(users[i].step()).words());
        }
      }
    }
  }
}

package pourwright.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What is planned so far: who and what is taken when. */
final class Bench {
  private final PlanProblem problem;
  private final Map<String, Occupancy> occupied = new HashMap<>();
  private final List<Window> presence;
  private final Map<String, Placed> placed = new HashMap<>();
  private final List<Placed> inOrder = new ArrayList<>();
  private final Map<String, List<Placed>> byTag = new HashMap<>();
  private final Map<String, Step> steps;
  private final Map<String, List<Link>> linksInto = new HashMap<>();
  private final Map<String, List<Span>> spansTo = new HashMap<>();

  Bench(PlanProblem problem) {
    this.problem = problem;
    this.presence = problem.presence();
    this.steps = problem.stepsByKey();
    for (Link link : problem.links()) {
      linksInto.computeIfAbsent(link.after(), k -> new ArrayList<>()).add(link);
    }
    for (Span span : problem.spans()) {
      spansTo.computeIfAbsent(span.toStep(), k -> new ArrayList<>()).add(span);
    }
    Map<String, Integer> washing = new HashMap<>();
    problem.washings().forEach(w -> washing.put(w.resource(), w.minutes()));
    for (Resource r : problem.resources()) {
      int wash = washing.getOrDefault(r.key(), 0);
      occupied.put(r.key(), new Occupancy(r.capacity(), r.windows(), wash));
    }
    for (Step step : problem.steps()) {
      if (step.fixedStartMin() != null) {
        put(
            new Placed(
                step.key(),
                step.fixedStartMin(),
                step.fixedStartMin() + step.minutes(),
                step.kind() == StepKind.HANDS ? anyone(step) : null));
      }
    }
  }

  private String anyone(Step step) {
    return step.people().stream()
        .sorted()
        .findFirst()
        .orElseGet(() -> problem.people().get(0).key());
  }

  List<Placed> placed() {
    return new ArrayList<>(inOrder);
  }

  List<Link> linksInto(String step) {
    return linksInto.getOrDefault(step, List.of());
  }

  List<Span> spansTo(String step) {
    return spansTo.getOrDefault(step, List.of());
  }

  @Nullable Placed of(String step) {
    return placed.get(step);
  }

  private Occupancy occupancy(String resource) {
    return java.util.Objects.requireNonNull(occupied.get(resource));
  }

  private Step step(Placed place) {
    return java.util.Objects.requireNonNull(steps.get(place.step()));
  }

  private static String family(Step step) {
    return step.family() == null ? "" : step.family();
  }

  /** How much of everything is taken now, to come back to. */
  record Mark(Map<String, Integer> sizes, int steps) {}

  Mark mark() {
    Map<String, Integer> sizes = new HashMap<>();
    occupied.forEach((key, occupancy) -> sizes.put(key, occupancy.size()));
    return new Mark(sizes, inOrder.size());
  }

  void backTo(Mark mark) {
    mark.sizes().forEach((key, size) -> occupancy(key).backTo(size));
    while (inOrder.size() > mark.steps()) {
      Placed last = inOrder.remove(inOrder.size() - 1);
      placed.remove(last.step());
      for (String tag : step(last).tags()) {
        List<Placed> tagged = byTag.getOrDefault(tag, List.of());
        tagged.remove(tagged.size() - 1);
      }
    }
  }

  void put(Placed place) {
    Step step = step(place);
    placed.put(place.step(), place);
    inOrder.add(place);
    step.tags().forEach(tag -> byTag.computeIfAbsent(tag, t -> new ArrayList<>()).add(place));
    if (place.person() != null) {
      occupancy(place.person()).take(new Occupancy.Taken(place.startMin(), place.endMin(), 1, ""));
    }
    step.uses()
        .forEach(
            (key, amount) ->
                occupancy(key)
                    .take(
                        new Occupancy.Taken(
                            place.startMin(), place.endMin(), amount, family(step))));
  }

  /** Takes a thing from the start of one placed step to the end of another. */
  void hold(Span span, int fromMin, int toMin) {
    occupancy(span.resource()).take(new Occupancy.Taken(fromMin, toMin, span.amount(), ""));
  }

  /** The first minute from {@code fromMin} on at which a thing is free for so long. */
  int firstFree(Span span, int fromMin, int toMin) {
    return occupancy(span.resource())
        .firstFree(new Occupancy.Taken(fromMin, toMin, span.amount(), ""), problem.horizonMin());
  }

  /** The earliest place of a step from a minute on; null when the horizon comes first. */
  @Nullable Placed earliest(Step step, int fromMin) {
    int limit = problem.horizonMin();
    int at = fromMin;
    while (at + step.minutes() <= limit) {
      Placed hands = withHands(step, at, limit);
      if (hands == null) {
        return null;
      }
      int next = afterApart(step, afterThings(step, inHours(step, hands.startMin(), limit), limit));
      if (next == hands.startMin()) {
        return hands;
      }
      at = next;
    }
    return null;
  }

  private @Nullable Placed withHands(Step step, int at, int limit) {
    if (step.kind() != StepKind.HANDS) {
      return new Placed(step.key(), at, at + step.minutes(), null);
    }
    int best = limit;
    String who = null;
    for (Resource person : problem.people()) {
      if (!step.people().isEmpty() && !step.people().contains(person.key())) {
        continue;
      }
      int free =
          occupancy(person.key())
              .firstFree(new Occupancy.Taken(at, at + step.minutes(), 1, ""), limit);
      if (free < best) {
        best = free;
        who = person.key();
      }
    }
    return who == null ? null : new Placed(step.key(), best, best + step.minutes(), who);
  }

  private int inHours(Step step, int at, int limit) {
    if (step.hot()) {
      return Windows.firstHot(presence, at, step.minutes(), problem.lastHotStartMin(), limit);
    }
    return step.kind() == StepKind.WATCH
        ? Windows.firstWithin(presence, at, step.minutes(), limit)
        : at;
  }

  private int afterThings(Step step, int at, int limit) {
    int next = at;
    for (var use : step.uses().entrySet()) {
      Occupancy.Taken wish =
          new Occupancy.Taken(at, at + step.minutes(), use.getValue(), family(step));
      next = Math.max(next, occupancy(use.getKey()).firstFree(wish, limit));
    }
    return next;
  }

  private int afterApart(Step step, int at) {
    int next = at;
    for (Apart apart : problem.apart()) {
      next = Math.max(next, after(step, apart.tag(), apart.otherTag(), at));
      next = Math.max(next, after(step, apart.otherTag(), apart.tag(), at));
    }
    return next;
  }

  private int after(Step step, String own, String other, int at) {
    int next = at;
    if (step.tags().contains(own)) {
      for (Placed p : byTag.getOrDefault(other, List.of())) {
        boolean meets = p.startMin() < at + step.minutes() && at < p.endMin();
        next = meets ? Math.max(next, p.endMin()) : next;
      }
    }
    return next;
  }
}

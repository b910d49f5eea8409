package pourwright.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Places the steps of one batch, moving earlier ones back where a maximum wait would break. */
final class BatchPlacing {
  private static final int TRIES_MAX = 20_000;

  private final PlanProblem problem;
  private final Bench bench;
  private final List<Step> batch;
  private final Map<String, Integer> notBefore = new HashMap<>();
  private String trouble = "";

  BatchPlacing(PlanProblem problem, Bench bench, List<Step> batch) {
    this.problem = problem;
    this.bench = bench;
    this.batch = batch;
    batch.forEach(s -> notBefore.put(s.key(), s.earliestMin()));
  }

  /** Places all steps; an empty string when it could, else what stood in the way. */
  String place() {
    Bench.Mark start = bench.mark();
    for (int tries = 0; tries < TRIES_MAX; tries++) {
      if (placeOnce()) {
        return "";
      }
      bench.backTo(start);
      if (notBefore.values().stream().anyMatch(m -> m > problem.horizonMin())) {
        break;
      }
    }
    return trouble.isEmpty() ? batch.get(0).batch() + " does not fit before the horizon" : trouble;
  }

  private boolean placeOnce() {
    for (Step step : batch) {
      if (step.fixedStartMin() != null) {
        if (!holdSpans(step)) {
          return false;
        }
        continue;
      }
      Placed place = bench.earliest(step, earliestOf(step));
      if (place == null) {
        trouble = step.words() + " finds no place before the horizon";
        notBefore.put(step.key(), problem.horizonMin() + 1);
        return false;
      }
      bench.put(place);
      if (!inTime(step, place) || !holdSpans(step)) {
        return false;
      }
    }
    return true;
  }

  private int earliestOf(Step step) {
    int earliest = Math.max(0, notBefore.getOrDefault(step.key(), 0));
    for (Link link : bench.linksInto(step.key())) {
      Placed earlier = bench.of(link.before());
      if (earlier != null) {
        earliest = Math.max(earliest, earlier.endMin() + link.minMin());
      }
    }
    return earliest;
  }

  /** Checks the maximum waits into a step that was just placed, and out of it to fixed ones. */
  private boolean inTime(Step step, Placed place) {
    for (Link link : bench.linksInto(step.key())) {
      Placed earlier = bench.of(link.before());
      if (earlier == null || link.maxMin() == null) {
        continue;
      }
      int over = place.startMin() - earlier.endMin() - link.maxMin();
      if (over > 0) {
        trouble = step.words() + " cannot follow in time: " + link.reason();
        return moveBack(link.before(), earlier, over);
      }
    }
    return true;
  }

  /** Moves an earlier step of this batch back; one of another batch or a fixed one cannot be. */
  private boolean moveBack(String key, Placed earlier, int minutes) {
    Integer bound = notBefore.get(key);
    if (bound == null || isFixed(key)) {
      notBefore.put(batch.get(0).key(), problem.horizonMin() + 1);
      return false;
    }
    notBefore.put(key, Math.max(bound, earlier.startMin() + minutes));
    return false;
  }

  private boolean isFixed(String key) {
    return batch.stream().anyMatch(s -> s.key().equals(key) && s.fixedStartMin() != null);
  }

  private boolean holdSpans(Step last) {
    for (Span span : bench.spansTo(last.key())) {
      Placed from = bench.of(span.fromStep());
      Placed to = bench.of(span.toStep());
      if (from == null || to == null) {
        continue;
      }
      boolean fixed = isFixed(span.fromStep());
      int free = fixed ? from.startMin() : bench.firstFree(span, from.startMin(), to.endMin());
      if (free > from.startMin()) {
        trouble = last.words() + ": " + span.resource() + " is taken until then";
        return moveBack(span.fromStep(), from, free - from.startMin());
      }
      bench.hold(span, from.startMin(), to.endMin());
    }
    return true;
  }
}

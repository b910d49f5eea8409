package pourwright.solve;

import com.google.ortools.sat.LinearExpr;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner.Effort;

/**
 * Finds a minimal set of rules that no plan keeps together: each of them can be left out and a plan
 * exists. By halving (U. Junker, "QuickXplain: Preferred Explanations and Relaxations for
 * Over-Constrained Problems", AAAI 2004). Where the solver cannot tell within its share of time
 * whether a set can be kept, the set counts as one that can; what is found is then proved once
 * more, and the answer says when it could not be.
 */
final class Conflict {
  private static final Duration SHARE = Duration.ofMillis(1500);

  private final Relaxed relaxed;
  private final Effort effort;
  private final long deadline;

  private Conflict(PlanProblem problem, Effort effort) {
    this.relaxed = new Relaxed(problem);
    this.effort = effort;
    this.deadline = System.nanoTime() + Math.max(effort.limit().toNanos(), 15_000_000_000L);
  }

  /** The rules in conflict as sentences. */
  static List<String> sentences(PlanProblem problem, Effort effort) {
    Conflict conflict = new Conflict(problem, effort);
    List<Relaxed.Rule> rules = conflict.relaxed.rules();
    if (conflict.impossible(List.of())) {
      return List.of("a step is longer than the time planned for; plan further ahead");
    }
    List<Relaxed.Rule> found = conflict.explain(List.of(), rules, false);
    List<String> sentences =
        new ArrayList<>(found.stream().map(conflict.relaxed::sentence).toList());
    if (!conflict.impossible(found)) {
      sentences.add("there may be more: the search for reasons ran out of time");
    }
    return sentences;
  }

  private List<Relaxed.Rule> explain(
      List<Relaxed.Rule> kept, List<Relaxed.Rule> open, boolean test) {
    if (test && impossible(kept)) {
      return List.of();
    }
    if (open.size() == 1) {
      return open;
    }
    List<Relaxed.Rule> one = open.subList(0, open.size() / 2);
    List<Relaxed.Rule> other = open.subList(open.size() / 2, open.size());
    List<Relaxed.Rule> fromOther = explain(joined(kept, one), other, true);
    List<Relaxed.Rule> fromOne = explain(joined(kept, fromOther), one, !fromOther.isEmpty());
    return joined(fromOne, fromOther);
  }

  private static List<Relaxed.Rule> joined(List<Relaxed.Rule> some, List<Relaxed.Rule> more) {
    List<Relaxed.Rule> all = new ArrayList<>(some);
    all.addAll(more);
    return all;
  }

  /** True when it is proven that no plan keeps these rules. */
  private boolean impossible(List<Relaxed.Rule> rules) {
    PlanModel model = new PlanModel(relaxed.with(rules));
    if (model.isImpossible()) {
      return true;
    }
    long left = deadline - System.nanoTime();
    if (left <= 0 || effort.cancelled().getAsBoolean()) {
      return false;
    }
    Duration limit = Duration.ofNanos(Math.min(left, SHARE.toNanos()));
    return new Search(effort)
        .minimize(model.model, LinearExpr.newBuilder(), limit, values -> {})
        .impossible();
  }
}

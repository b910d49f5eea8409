package pourwright.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Moving a step by hand, asking why a step is where it is, and what differs between two plans. */
public final class Rearrange {
  private Rearrange() {}

  /**
   * A plan after a move by hand and what it breaks.
   *
   * @param plan the plan with the step, and what is tied to it without play, moved
   * @param breaks what it breaks now and did not before; empty when the move keeps every rule
   */
  public record Moved(Plan plan, List<PlanChecker.Finding> breaks) {
    /** Keeps its own copy. */
    public Moved {
      breaks = List.copyOf(breaks);
    }
  }

  /**
   * A step that stands elsewhere in the new plan.
   *
   * @param step its key
   * @param words as it is shown
   * @param fromMin where it began; -1 when it is new
   * @param toMin where it begins now; -1 when it is gone
   */
  public record Change(String step, String words, int fromMin, int toMin) {
    /** Minutes later; negative when earlier, 0 for what is new or gone. */
    public int later() {
      return fromMin < 0 || toMin < 0 ? 0 : toMin - fromMin;
    }
  }

  /** Moves a step, and the steps tied to it without play, so that it begins at a minute. */
  public static Moved move(PlanProblem problem, Plan plan, String step, int startMin) {
    Placed placed = plan.byStep().get(step);
    if (placed == null) {
      throw new IllegalArgumentException("no step " + step + " in the plan");
    }
    Plan moved = shifted(plan, tied(problem, step), startMin - placed.startMin());
    Set<String> before = new TreeSet<>();
    PlanChecker.check(problem, plan).forEach(f -> before.add(f.sentence()));
    return new Moved(
        moved,
        PlanChecker.check(problem, moved).stream()
            .filter(f -> !before.contains(f.sentence()))
            .toList());
  }

  /**
   * Why a step does not begin a minute earlier: the rules that this would break, as sentences. When
   * none would be, that is said: then only the wish for few and short days holds it.
   */
  public static List<String> why(PlanProblem problem, Plan plan, String step) {
    Step asked = problem.stepsByKey().get(step);
    Placed placed = plan.byStep().get(step);
    if (asked == null || placed == null) {
      throw new IllegalArgumentException("no step " + step + " in the plan");
    }
    if (asked.begun()) {
      return List.of("It has begun already.");
    }
    if (asked.fixedStartMin() != null) {
      return List.of("It was put there by hand.");
    }
    if (placed.startMin() == 0) {
      return List.of("The plan begins with it.");
    }
    List<String> reasons =
        move(problem, plan, step, placed.startMin() - 1).breaks().stream()
            .map(f -> "A minute earlier: " + f.sentence() + ".")
            .distinct()
            .toList();
    return reasons.isEmpty()
        ? List.of("No rule holds it there; the plan keeps it for few and short days.")
        : reasons;
  }

  /** What differs, in order of the new begin; what is gone comes first. */
  public static List<Change> changes(PlanProblem problem, Plan before, Plan after) {
    Map<String, Placed> was = before.byStep();
    Map<String, Placed> is = after.byStep();
    List<Change> changes = new ArrayList<>();
    for (Placed placed : before.placed()) {
      if (!is.containsKey(placed.step())) {
        changes.add(new Change(placed.step(), words(problem, placed), placed.startMin(), -1));
      }
    }
    for (Placed placed : after.placed()) {
      Placed old = was.get(placed.step());
      int from = old == null ? -1 : old.startMin();
      if (from != placed.startMin() && placed.startMin() >= 0) {
        changes.add(new Change(placed.step(), words(problem, placed), from, placed.startMin()));
      }
    }
    return changes;
  }

  private static String words(PlanProblem problem, Placed placed) {
    Step step = problem.stepsByKey().get(placed.step());
    return step == null ? placed.step() : step.words();
  }

  private static Plan shifted(Plan plan, Set<String> steps, int by) {
    return new Plan(
        plan.placed().stream()
            .map(
                p ->
                    steps.contains(p.step())
                        ? new Placed(p.step(), p.startMin() + by, p.endMin() + by, p.person())
                        : p)
            .toList());
  }

  /** The step and all that must keep an exact distance to it. */
  private static Set<String> tied(PlanProblem problem, String step) {
    Set<String> tied = new LinkedHashSet<>();
    Deque<String> open = new ArrayDeque<>(List.of(step));
    while (!open.isEmpty()) {
      String next = open.remove();
      if (tied.add(next)) {
        for (Link link : problem.links()) {
          Integer most = link.maxMin();
          if (most != null && most == link.minMin()) {
            if (link.before().equals(next)) {
              open.add(link.after());
            } else if (link.after().equals(next)) {
              open.add(link.before());
            }
          }
        }
      }
    }
    return tied;
  }
}

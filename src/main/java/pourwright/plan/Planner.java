package pourwright.plan;

import java.time.Duration;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Makes a plan of a problem. The forward rule is one; a solver may stand behind the same door. */
public interface Planner {

  /**
   * How hard to try.
   *
   * @param limit time after which the best so far is given; the forward rule ignores it
   * @param seed for anything that is tried at random
   * @param workers threads that may be used, 1 or more
   * @param hint a plan to start from and to disturb as little as may be
   * @param better called with each better plan as it is found, from any thread
   * @param cancelled asked now and then; true ends the search with the best so far
   */
  record Effort(
      Duration limit,
      long seed,
      int workers,
      @Nullable Plan hint,
      Consumer<Plan> better,
      BooleanSupplier cancelled) {

    /** Up to a limit, one seed, one thread, nothing to start from. */
    public static Effort of(Duration limit) {
      return new Effort(limit, 1, 1, null, plan -> {}, () -> false);
    }
  }

  /** What came of it. */
  sealed interface Outcome {}

  /**
   * A plan that keeps every rule.
   *
   * @param plan the plan
   * @param boundMin no plan has less weighted tardiness than this; 0 when nothing was proven
   * @param proven true when no plan keeps the promises better
   * @param aims what was kept small, in order of rank; empty where no search was made
   */
  record Planned(Plan plan, long boundMin, boolean proven, List<Aim> aims) implements Outcome {
    /** Keeps its own copy. */
    public Planned {
      aims = List.copyOf(aims);
    }

    /** A plan without a search. */
    public Planned(Plan plan, long boundMin, boolean proven) {
      this(plan, boundMin, proven, List.of());
    }
  }

  /**
   * One thing that was kept small, after all that rank before it.
   *
   * @param words what, e.g. {@code minutes late, weighted}
   * @param value what the plan has of it
   * @param bound no plan that is as good in the earlier aims has less
   */
  record Aim(String words, long value, long bound) {
    /** True when nothing is better. */
    public boolean proven() {
      return value <= bound;
    }
  }

  /**
   * No plan keeps every rule.
   *
   * @param reasons the rules in conflict, in the trade's words
   */
  record Impossible(List<String> reasons) implements Outcome {}

  /**
   * Neither a plan nor a proof that there is none, within the limit.
   *
   * @param reasons what could not be placed and why, as far as is known
   */
  record NotFound(List<String> reasons) implements Outcome {}

  /** Plans the problem. */
  Outcome plan(PlanProblem problem, Effort effort);
}

package pourwright.solve;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.SatParameters;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.function.ToLongFunction;
import pourwright.plan.Planner.Effort;

/** One search for the smallest value of one objective: limited, cancellable, telling as it goes. */
final class Search {
  private static final long STACK_BYTES = 16L << 20;
  private static final long LOOK_MILLIS = 20;

  /**
   * What came of it.
   *
   * @param status the solver's word
   * @param value the best objective found; meaningless without an answer
   * @param bound no answer has a smaller one
   * @param deterministicTime the solver's own measure of the work done
   * @param values reads the best solution
   */
  record Result(
      CpSolverStatus status,
      long value,
      long bound,
      double deterministicTime,
      ToLongFunction<IntVar> values) {
    boolean answered() {
      return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    }

    boolean proven() {
      return status == CpSolverStatus.OPTIMAL;
    }

    boolean impossible() {
      return status == CpSolverStatus.INFEASIBLE;
    }
  }

  private final CpSolver solver = new CpSolver();
  private final Effort effort;

  Search(Effort effort) {
    this.effort = effort;
    parameters()
        .setNumWorkers(effort.workers())
        .setRandomSeed((int) (effort.seed() & Integer.MAX_VALUE));
  }

  SatParameters.Builder parameters() {
    return solver.getParameters();
  }

  /** Searches until proof, limit or cancel. */
  Result minimize(
      CpModel model,
      LinearExprBuilder objective,
      Duration limit,
      Consumer<ToLongFunction<IntVar>> better) {
    model.minimize(objective);
    parameters().setMaxTimeInSeconds(limit.toNanos() * 1e-9);
    CpSolverStatus status = solve(model, better);
    boolean answered = Cp.answered(status);
    return new Result(
        status,
        answered ? Math.round(solver.objectiveValue()) : 0,
        answered ? (long) Math.ceil(solver.bestObjectiveBound() - 1e-6) : 0,
        solver.response().getDeterministicTime(),
        solver::value);
  }

  private CpSolverStatus solve(CpModel model, Consumer<ToLongFunction<IntVar>> better) {
    CpSolverSolutionCallback tell =
        new CpSolverSolutionCallback() {
          @Override
          public void onSolutionCallback() {
            better.accept(this::value);
          }
        };
    FutureTask<CpSolverStatus> task = new FutureTask<>(() -> solver.solve(model, tell));
    Thread thread = new Thread(null, task, "planner", STACK_BYTES);
    thread.setDaemon(true);
    thread.start();
    return await(task);
  }

  private CpSolverStatus await(FutureTask<CpSolverStatus> task) {
    while (true) {
      try {
        return task.get(LOOK_MILLIS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException e) {
        if (effort.cancelled().getAsBoolean()) {
          solver.stopSearch();
        }
      } catch (InterruptedException e) {
        solver.stopSearch();
        Thread.currentThread().interrupt();
        return CpSolverStatus.UNKNOWN;
      } catch (ExecutionException e) {
        throw new IllegalStateException("the solver failed", e.getCause());
      }
    }
  }
}

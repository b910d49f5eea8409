package pourwright.solve;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** How this room runs the solver: quiet, seeded, on a thread whose stack the solver can fill. */
final class Cp {
  /** The solver recurses deeper than the small stacks that the program gives its own threads. */
  private static final long STACK_BYTES = 16L << 20;

  private static final int SEED = 1;

  private Cp() {}

  /** A loaded model. */
  static CpModel model() {
    NativeSolver.ready();
    return new CpModel();
  }

  /** A solver with one worker, so that the same question has the same answer. */
  static CpSolver solver(double seconds) {
    NativeSolver.ready();
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1).setRandomSeed(SEED).setMaxTimeInSeconds(seconds);
    return solver;
  }

  /** Solves on a thread of its own and waits for it. */
  static CpSolverStatus solve(CpSolver solver, CpModel model) {
    FutureTask<CpSolverStatus> task = new FutureTask<>(() -> solver.solve(model));
    Thread thread = new Thread(null, task, "solver", STACK_BYTES);
    thread.setDaemon(true);
    thread.start();
    try {
      return task.get();
    } catch (InterruptedException e) {
      solver.stopSearch();
      Thread.currentThread().interrupt();
      return CpSolverStatus.UNKNOWN;
    } catch (ExecutionException e) {
      throw new IllegalStateException("the solver failed", e.getCause());
    }
  }

  /** True when the solver has an answer, proven or not. */
  static boolean answered(CpSolverStatus status) {
    return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
  }

  /** The nearest whole number of millionths: a microgram of a gram, a nanolitre of a millilitre. */
  static long millionths(double value) {
    return Math.round(value * 1e6);
  }

  /** The greatest common divisor of all numbers; 1 when all are 0. */
  static long commonDivisor(long... numbers) {
    long divisor = 0;
    for (long number : numbers) {
      long a = divisor;
      long b = Math.abs(number);
      while (b != 0) {
        long rest = a % b;
        a = b;
        b = rest;
      }
      divisor = a;
    }
    return Math.max(1, divisor);
  }
}

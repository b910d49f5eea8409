package pourwright.solve;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import java.util.List;
import pourwright.cast.Leftover;
import pourwright.cast.Leftover.Filling;
import pourwright.cast.Leftover.Mold;
import pourwright.cast.LeftoverPacking;

/**
 * A bounded knapsack, solved to proof. Volumes count in nanolitres and values in millionths, so
 * that the answer is exact for every figure that can be weighed or priced.
 */
public final class CpSatLeftoverPacking implements LeftoverPacking {
  private static final double SECONDS = 20;

  @Override
  public Filling fill(Leftover leftover) {
    Model first = new Model(leftover);
    if (first.isEmpty()) {
      return leftover.filling(new long[leftover.molds().size()], true);
    }
    first.model.maximize(LinearExpr.weightedSum(first.counts, first.values));
    CpSolver best = Cp.solver(SECONDS);
    CpSolverStatus status = Cp.solve(best, first.model);
    if (!Cp.answered(status)) {
      throw new IllegalStateException("the packing has no answer: " + status);
    }
    long[] found = first.counts(best);
    if (status != CpSolverStatus.OPTIMAL) {
      return leftover.filling(found, false);
    }
    return leftover.filling(fullest(leftover, found), true);
  }

  /** Among the fillings that are worth as much, the one that leaves the least in the bowl. */
  private static long[] fullest(Leftover leftover, long[] found) {
    Model second = new Model(leftover);
    LinearExpr value = LinearExpr.weightedSum(second.counts, second.values);
    second.model.addGreaterOrEqual(value, second.value(found));
    second.model.maximize(LinearExpr.weightedSum(second.counts, second.volumes));
    for (int i = 0; i < found.length; i++) {
      second.model.addHint(second.counts[i], found[i]);
    }
    CpSolver solver = Cp.solver(SECONDS);
    return Cp.answered(Cp.solve(solver, second.model)) ? second.counts(solver) : found;
  }

  /** One variable for each kind of mold: how many are filled. */
  private static final class Model {
    private final CpModel model = Cp.model();
    private final IntVar[] counts;
    private final long[] volumes;
    private final long[] values;
    private final long[] most;

    Model(Leftover leftover) {
      List<Mold> molds = leftover.molds();
      long left = Cp.millionths(leftover.volumeMl());
      counts = new IntVar[molds.size()];
      volumes = molds.stream().mapToLong(m -> Cp.millionths(m.volumeMl())).toArray();
      values = molds.stream().mapToLong(m -> Cp.millionths(m.value())).toArray();
      most = new long[molds.size()];
      for (int i = 0; i < counts.length; i++) {
        most[i] = Math.min(molds.get(i).free(), left / volumes[i]);
        counts[i] = model.newIntVar(0, most[i], molds.get(i).name());
      }
      long divisor = Cp.commonDivisor(volumes);
      scale(volumes, divisor);
      scale(values, Cp.commonDivisor(values));
      model.addLessOrEqual(LinearExpr.weightedSum(counts, volumes), left / divisor);
      model.addLessOrEqual(LinearExpr.sum(counts), leftover.moldsAtMost());
    }

    private static void scale(long[] numbers, long divisor) {
      for (int i = 0; i < numbers.length; i++) {
        numbers[i] /= divisor;
      }
    }

    boolean isEmpty() {
      return java.util.Arrays.stream(most).allMatch(m -> m == 0);
    }

    long value(long[] found) {
      long sum = 0;
      for (int i = 0; i < found.length; i++) {
        sum += found[i] * values[i];
      }
      return sum;
    }

    long[] counts(CpSolver solver) {
      long[] found = new long[counts.length];
      for (int i = 0; i < found.length; i++) {
        found[i] = solver.value(counts[i]);
      }
      return found;
    }
  }
}

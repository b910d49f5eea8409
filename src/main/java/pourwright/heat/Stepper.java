package pourwright.heat;

import java.util.Arrays;

/**
 * Advances a {@link Box} in time by the stabilised explicit method RKL2, which with {@code s}
 * sweeps takes a step {@code (s² + s − 2)/4} times as long as the plain explicit method could.
 *
 * <p>Source: Meyer, Balsara and Aslam, J. Comput. Phys. 257 (2014) 594-626, equations 16 to 20.
 * What is lost to the surroundings is carried through the same recursion as the cells, so that the
 * balance closes to rounding and is not a difference of the other terms.
 */
public final class Stepper implements AutoCloseable {
  /** Share of the stability limit that is used. */
  private static final double CAUTION = 0.95;

  private static final int STAGES_MIN = 3;

  /** Pieces that the planes are cut into for sharing out. */
  private static final int PIECES = 8;

  private final Box box;
  private final Sweep sweep;
  private final Team team;
  private final int[] share;
  private double lostJ;
  private long stages;

  /** What the box's arrays are swept in. */
  public enum Precision {
    /** Four bytes a number: twice the cells in a vector, half the memory to move. */
    SINGLE,
    /** Eight bytes a number. */
    DOUBLE
  }

  /** A stepper over a box that has been set up, with that many threads. */
  public Stepper(Box box, Precision precision, int threads) {
    this.box = box;
    int members = Math.max(1, Math.min(threads, box.nz));
    this.sweep =
        precision == Precision.SINGLE ? new Sweep32(box, members) : new Sweep64(box, members);
    this.team = new Team(members);
    this.share = shares(members);
    for (int z = 0; z < box.nz; z++) {
      reload(z);
    }
  }

  /** First planes of the pieces that are shared out. */
  private int[] shares(int members) {
    int pieces = members == 1 ? 1 : Math.min(box.nz, PIECES);
    int[] first = new int[pieces + 1];
    for (int p = 0; p <= pieces; p++) {
      first[p] = (int) Math.round((double) box.nz * p / pieces);
    }
    return first;
  }

  /** Takes over a plane whose geometry was changed. */
  public void reload(int z) {
    sweep.load(z);
  }

  /** Takes over all losses and sources. */
  public void reloadExchange() {
    for (int z = 0; z < box.nz; z++) {
      sweep.loadExchange(z);
    }
  }

  /** Longest step of the plain explicit method whatever melts, s. */
  public double explicitLimitS() {
    double least = Double.POSITIVE_INFINITY;
    for (int z = 0; z < box.nz; z++) {
      least = Math.min(least, box.explicitLimitS(z));
    }
    return least;
  }

  /** Sweeps that a step of so many explicit steps needs; odd, at least 3. */
  static int stagesFor(double explicitSteps) {
    int least = (int) Math.ceil((Math.sqrt(9 + 16 * explicitSteps / CAUTION) - 1) / 2);
    int odd = least % 2 == 0 ? least + 1 : least;
    return Math.max(STAGES_MIN, odd);
  }

  /**
   * One step of that length with as many sweeps as stability needs. Conductances are those of its
   * start, so that what the stages see is symmetric and as stable as the method promises.
   */
  public void advance(double stepS) {
    everyPlane(sweep::begin);
    everyPlane(sweep::connect);
    Sweep.Peak fastest = new Sweep.Peak();
    for (int z = 0; z < box.nz; z++) {
      sweep.fastest(z, fastest);
    }
    int s = stagesFor(stepS * fastest.value);
    Sweep.Coefficients[] k = coefficients(s, stepS);
    Sweep.Tally[][] lostW = tallies(s);
    for (int j = 0; j < s; j++) {
      everyPlane(sweep::thermal);
      int now = j;
      team.each(
          share.length - 1,
          (piece, member) ->
              sweep.stage(share[piece], share[piece + 1], member, k[now], lostW[now]));
    }
    everyPlane(sweep::end);
    lostJ += lost(k, lostW);
    stages += s;
  }

  private void everyPlane(java.util.function.IntConsumer work) {
    team.each(
        share.length - 1,
        (piece, member) -> {
          for (int z = share[piece]; z < share[piece + 1]; z++) {
            work.accept(z);
          }
        });
  }

  private Sweep.Tally[][] tallies(int s) {
    Sweep.Tally[][] tallies = new Sweep.Tally[s][box.nz];
    for (Sweep.Tally[] stage : tallies) {
      Arrays.setAll(stage, z -> new Sweep.Tally());
    }
    return tallies;
  }

  private static double sum(Sweep.Tally[] planes) {
    double sum = 0;
    for (Sweep.Tally plane : planes) {
      sum += plane.sum;
    }
    return sum;
  }

  /** The stages' losses through the recursion of the cells. */
  private static double lost(Sweep.Coefficients[] k, Sweep.Tally[][] lostW) {
    double first = sum(lostW[0]);
    double last = k[0].rate() * first;
    double beforeLast = 0;
    for (int j = 1; j < k.length; j++) {
      double now =
          k[j].mu() * last
              + k[j].nu() * beforeLast
              + k[j].rate() * sum(lostW[j])
              + k[j].first() * first;
      beforeLast = last;
      last = now;
    }
    return last;
  }

  /** Coefficients of the stages, Meyer, Balsara and Aslam (2014), equations 16 and 17. */
  static Sweep.Coefficients[] coefficients(int s, double stepS) {
    double w1 = 4.0 / ((double) s * s + s - 2);
    Sweep.Coefficients[] k = new Sweep.Coefficients[s];
    k[0] = new Sweep.Coefficients(0, 0, b(1) * w1 * stepS, 0, true);
    for (int j = 2; j <= s; j++) {
      double mu = (2.0 * j - 1) / j * b(j) / b(j - 1);
      double nu = -(j - 1.0) / j * b(j) / b(j - 2);
      double rate = mu * w1 * stepS;
      k[j - 1] = new Sweep.Coefficients(mu, nu, rate, -(1 - b(j - 1)) * rate, false);
    }
    return k;
  }

  private static double b(int j) {
    return j < 2 ? 1.0 / 3 : (j * (double) j + j - 2) / (2.0 * j * (j + 1));
  }

  /** Heat lost to the surroundings so far, J. */
  public double lostJ() {
    return lostJ;
  }

  /** Sweeps so far. */
  public long stages() {
    return stages;
  }

  @Override
  public void close() {
    team.close();
  }
}

package pourwright.heat;

import java.util.Arrays;

/**
 * The plainest explicit step in double precision, for measuring: enthalpy to temperature, harmonic
 * mean flows, update; no losses, no sources, the same conductivity every way. Written as {@link
 * Sweep64} is. {@code ExplicitSweep32} is this text in single precision; a test holds the two
 * together.
 */
@SuppressWarnings("cast") // needed in the other precision
final class ExplicitSweep64 implements SweepBench.Plain {
  private final SweepBench.Setting of;
  private final int length;
  private final double[][] u;
  private final double[][] t;
  private final double[][] r;
  private final double[][] slope;
  private final double[][] melts;
  private final double[][] still;
  private final double[][] gain;
  private final Scratch[] scratch;
  private final double a;
  private final double b;
  private final double c;
  private final double start;
  private final double end;
  private final double meltAt;
  private final double sharp;
  private final double halfMore;

  private static final class Scratch {
    final double[] nextT;
    final double[] nextR;
    final double[] rowT;
    final double[] rowR;
    final double[] flowX;
    final double[] flowY;
    final double[] backX;
    final double[] backY;
    final double[] one;
    final double[] other;

    Scratch(int length) {
      nextT = new double[length];
      nextR = filled(length);
      rowT = new double[length];
      rowR = filled(length);
      flowX = new double[length];
      flowY = new double[length];
      backX = new double[length];
      backY = new double[length];
      one = new double[length];
      other = new double[length];
    }

    private static double[] filled(int length) {
      double[] r = new double[length];
      Arrays.fill(r, 1);
      return r;
    }
  }

  ExplicitSweep64(SweepBench.Setting of, int members) {
    this.of = of;
    this.length = of.nx() * of.ny();
    u = planes(of.enthalpy());
    t = new double[of.nz()][length];
    r = new double[of.nz()][length];
    slope = planes(of.slope());
    melts = planes(of.melts());
    still = planes(of.resistance());
    gain = planes(of.gain());
    scratch = new Scratch[members];
    Arrays.setAll(scratch, i -> new Scratch(length));
    a = (double) of.curve()[0];
    b = (double) of.curve()[1];
    c = (double) of.curve()[2];
    start = (double) of.curve()[3];
    end = (double) of.curve()[4];
    meltAt = (double) of.curve()[5];
    sharp = (double) of.curve()[6];
    halfMore = (double) of.curve()[7];
  }

  private double[][] planes(SweepBench.Doubles from) {
    double[][] to = new double[of.nz()][length];
    for (int z = 0; z < to.length; z++) {
      for (int i = 0; i < length; i++) {
        to[z][i] = (double) from.values()[z][i];
      }
    }
    return to;
  }

  @Override
  public void thermal(int z) {
    double[] h = u[z];
    double[] kelvin = t[z];
    double[] resist = r[z];
    double[] steep = slope[z];
    double[] melt = melts[z];
    double[] solid = still[z];
    for (int i = 0; i < h.length; i++) {
      double bend = a + b * Math.abs(h[i] - start) + c * Math.abs(h[i] - end);
      double now = steep[i] * h[i] + melt[i] * bend;
      double y = (now - meltAt) * sharp;
      kelvin[i] = now;
      resist[i] = solid[i] + melt[i] * ((Math.abs(y) - Math.abs(y - 1) + 1) * halfMore);
    }
  }

  @Override
  public void update(int from, int to, int member) {
    Scratch s = scratch[member];
    double[] above = s.one;
    double[] below = s.other;
    up(from - 1, below);
    for (int z = from; z < to; z++) {
      up(z, above);
      int row = of.nx();
      System.arraycopy(t[z], 1, s.nextT, 0, length - 1);
      System.arraycopy(r[z], 1, s.nextR, 0, length - 1);
      System.arraycopy(t[z], row, s.rowT, 0, length - row);
      System.arraycopy(r[z], row, s.rowR, 0, length - row);
      flow(t[z], s.nextT, r[z], s.nextR, s.flowX);
      flow(t[z], s.rowT, r[z], s.rowR, s.flowY);
      System.arraycopy(s.flowX, 0, s.backX, 1, length - 1);
      System.arraycopy(s.flowY, 0, s.backY, row, length - row);
      add(z, s, above, below);
      double[] turn = above;
      above = below;
      below = turn;
    }
  }

  private void up(int z, double[] flow) {
    if (z < 0 || z + 1 >= of.nz()) {
      Arrays.fill(flow, 0);
    } else {
      flow(t[z], t[z + 1], r[z], r[z + 1], flow);
    }
  }

  private static void flow(double[] t, double[] next, double[] r, double[] nextR, double[] flow) {
    for (int i = 0; i < flow.length; i++) {
      flow[i] = (next[i] - t[i]) / (r[i] + nextR[i]);
    }
  }

  private void add(int z, Scratch s, double[] up, double[] down) {
    double[] h = u[z];
    double[] g = gain[z];
    double[] x = s.flowX;
    double[] backX = s.backX;
    double[] y = s.flowY;
    double[] backY = s.backY;
    for (int i = 0; i < h.length; i++) {
      h[i] += g[i] * ((x[i] - backX[i]) + (y[i] - backY[i]) + (up[i] - down[i]));
    }
  }

  @Override
  public SweepBench.Sum sum() {
    SweepBench.Sum sum = new SweepBench.Sum();
    for (int z = 0; z < u.length; z++) {
      for (int i = 0; i < length; i++) {
        sum.add(gain[z][i] > 0 ? u[z][i] / gain[z][i] : 0);
      }
    }
    return sum;
  }
}

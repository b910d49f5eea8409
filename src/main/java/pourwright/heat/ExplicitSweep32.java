package pourwright.heat;

import java.util.Arrays;

/**
 * The plainest explicit step in single precision, for measuring: enthalpy to temperature, harmonic
 * mean flows, update; no losses, no sources, the same conductivity every way. Written as {@link
 * Sweep64} is. {@code ExplicitSweep64} is this text in double precision; a test holds the two
 * together.
 */
@SuppressWarnings("cast") // needed in the other precision
final class ExplicitSweep32 implements SweepBench.Plain {
  private final SweepBench.Setting of;
  private final int length;
  private final float[][] u;
  private final float[][] t;
  private final float[][] r;
  private final float[][] slope;
  private final float[][] melts;
  private final float[][] still;
  private final float[][] gain;
  private final Scratch[] scratch;
  private final float a;
  private final float b;
  private final float c;
  private final float start;
  private final float end;
  private final float meltAt;
  private final float sharp;
  private final float halfMore;

  private static final class Scratch {
    final float[] nextT;
    final float[] nextR;
    final float[] rowT;
    final float[] rowR;
    final float[] flowX;
    final float[] flowY;
    final float[] backX;
    final float[] backY;
    final float[] one;
    final float[] other;

    Scratch(int length) {
      nextT = new float[length];
      nextR = filled(length);
      rowT = new float[length];
      rowR = filled(length);
      flowX = new float[length];
      flowY = new float[length];
      backX = new float[length];
      backY = new float[length];
      one = new float[length];
      other = new float[length];
    }

    private static float[] filled(int length) {
      float[] r = new float[length];
      Arrays.fill(r, 1);
      return r;
    }
  }

  ExplicitSweep32(SweepBench.Setting of, int members) {
    this.of = of;
    this.length = of.nx() * of.ny();
    u = planes(of.enthalpy());
    t = new float[of.nz()][length];
    r = new float[of.nz()][length];
    slope = planes(of.slope());
    melts = planes(of.melts());
    still = planes(of.resistance());
    gain = planes(of.gain());
    scratch = new Scratch[members];
    Arrays.setAll(scratch, i -> new Scratch(length));
    a = (float) of.curve()[0];
    b = (float) of.curve()[1];
    c = (float) of.curve()[2];
    start = (float) of.curve()[3];
    end = (float) of.curve()[4];
    meltAt = (float) of.curve()[5];
    sharp = (float) of.curve()[6];
    halfMore = (float) of.curve()[7];
  }

  private float[][] planes(SweepBench.Doubles from) {
    float[][] to = new float[of.nz()][length];
    for (int z = 0; z < to.length; z++) {
      for (int i = 0; i < length; i++) {
        to[z][i] = (float) from.values()[z][i];
      }
    }
    return to;
  }

  @Override
  public void thermal(int z) {
    float[] h = u[z];
    float[] kelvin = t[z];
    float[] resist = r[z];
    float[] steep = slope[z];
    float[] melt = melts[z];
    float[] solid = still[z];
    for (int i = 0; i < h.length; i++) {
      float bend = a + b * Math.abs(h[i] - start) + c * Math.abs(h[i] - end);
      float now = steep[i] * h[i] + melt[i] * bend;
      float y = (now - meltAt) * sharp;
      kelvin[i] = now;
      resist[i] = solid[i] + melt[i] * ((Math.abs(y) - Math.abs(y - 1) + 1) * halfMore);
    }
  }

  @Override
  public void update(int from, int to, int member) {
    Scratch s = scratch[member];
    float[] above = s.one;
    float[] below = s.other;
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
      float[] turn = above;
      above = below;
      below = turn;
    }
  }

  private void up(int z, float[] flow) {
    if (z < 0 || z + 1 >= of.nz()) {
      Arrays.fill(flow, 0);
    } else {
      flow(t[z], t[z + 1], r[z], r[z + 1], flow);
    }
  }

  private static void flow(float[] t, float[] next, float[] r, float[] nextR, float[] flow) {
    for (int i = 0; i < flow.length; i++) {
      flow[i] = (next[i] - t[i]) / (r[i] + nextR[i]);
    }
  }

  private void add(int z, Scratch s, float[] up, float[] down) {
    float[] h = u[z];
    float[] g = gain[z];
    float[] x = s.flowX;
    float[] backX = s.backX;
    float[] y = s.flowY;
    float[] backY = s.backY;
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

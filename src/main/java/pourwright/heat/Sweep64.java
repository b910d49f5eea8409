package pourwright.heat;

import java.util.Arrays;

/**
 * The flows of a {@link Box} in double precision. Every loop runs over whole planes without a
 * branch, reads every array at the same index (shifted neighbours are copied to scratch arrays
 * first) and takes the kinks of the melting curve as absolute values, so that the compiler can use
 * the machine's vectors. {@code Sweep32} is this text in single precision; a test holds the two
 * together.
 */
@SuppressWarnings("cast") // needed in the other precision
final class Sweep64 implements Sweep {
  private final Box box;
  private final int length;
  private final int stride;
  private final double[][] before;
  private final double[][] kelvin;
  private final double[][] acrossR;
  private final double[][] uprightR;
  private final double[][] flowsX;
  private final double[][] flowsY;
  private final double[][] flowsZ;
  private final double[][] steepest;
  private final double[][] rate0;
  private final double[][] slope;
  private final double[][] melts;
  private final double[][] conductivity;
  private final double[][] tall;
  private final double[][] faceX;
  private final double[][] faceY;
  private final double[][] faceZ;
  private final double[][] gain;
  private final double[][] loss;
  private final double[][] source;
  private final double[][] last;
  private final double[][] beforeLast;
  private final int[][] losing;
  private final Scratch[] scratch;
  private final Curve curve;
  private final Fronts fronts;

  /** The melting curve as {@code T = slope·h + melts·(a + b·|h−start| + c·|h−end|)}. */
  private static final class Curve {
    final double a;
    final double b;
    final double c;
    final double start;
    final double end;
    final double perWidth;
    final double half;
    final double across;
    final double upright;
    final double slope;
    final double steepest;
    final double meltAt;
    final double meanK;
    final double halfMoreK;
    final double offsetK;

    Curve(Box box) {
      var s = box.curve.slopes();
      var wax = box.curve.of();
      slope = (double) (0.5 * (s[0] + s[2]));
      var most = box.integral ? Math.max(wax.solid(), wax.liquid()) : 1;
      steepest = (double) (most * Math.max(s[0], Math.max(s[1], s[2])));
      b = (double) (0.5 * (s[1] - s[0]));
      c = (double) (0.5 * (s[2] - s[1]));
      start = (double) box.curve.startJ();
      end = (double) box.curve.endJ();
      var atStart = wax.fromC() - box.curve.referenceC();
      var curved = 0.5 * (s[0] + s[2]) * box.curve.startJ();
      var width = box.curve.endJ() - box.curve.startJ();
      a = (double) (atStart - curved - 0.5 * (s[2] - s[1]) * width);
      perWidth = (double) (0.5 / width);
      half = (double) 0.5;
      across = (double) (wax.liquid() * box.across - wax.solid());
      upright = (double) (wax.liquid() * box.upright - wax.solid());
      meltAt = (double) atStart;
      meanK = (double) (0.5 * (wax.liquid() + wax.solid()));
      halfMoreK = (double) (0.5 * (wax.liquid() - wax.solid()));
      offsetK = (double) (-0.5 * (wax.liquid() - wax.solid()) * Math.abs(atStart));
    }
  }

  /** One thread's arrays for shifted neighbours and flows. */
  private static final class Scratch {
    final double[] nextT;
    final double[] rowT;
    final double[] flowX;
    final double[] flowY;
    final double[] backX;
    final double[] backY;
    final double[] one;
    final double[] other;

    Scratch(int length) {
      nextT = new double[length];
      rowT = new double[length];
      flowX = new double[length];
      flowY = new double[length];
      backX = new double[length];
      backY = new double[length];
      one = new double[length];
      other = new double[length];
    }
  }

  Sweep64(Box box, int threads) {
    this.box = box;
    this.length = box.length;
    this.stride = box.stride;
    before = planes();
    kelvin = planes();
    acrossR = planes();
    uprightR = planes();
    flowsX = planes();
    flowsY = planes();
    flowsZ = planes();
    steepest = planes();
    rate0 = planes();
    slope = planes();
    melts = planes();
    conductivity = planes();
    tall = planes();
    faceX = planes();
    faceY = planes();
    faceZ = planes();
    gain = planes();
    loss = planes();
    source = planes();
    last = planes();
    beforeLast = planes();
    losing = new int[box.nz][0];
    scratch = new Scratch[threads];
    for (int i = 0; i < threads; i++) {
      scratch[i] = new Scratch(length);
    }
    curve = new Curve(box);
    fronts = new Fronts(box);
  }

  private double[][] planes() {
    return new double[box.nz][length];
  }

  @Override
  public void load(int z) {
    for (int i = 0; i < length; i++) {
      melts[z][i] = (double) box.melts[z][i];
      conductivity[z][i] = (double) box.conductivity[z][i];
      slope[z][i] = melts[z][i] > 0 ? curve.slope : (double) (1 / box.heatCapacity[z][i]);
      steepest[z][i] = melts[z][i] > 0 ? curve.steepest : slope[z][i];
      tall[z][i] = (double) box.tall[z][i];
      faceX[z][i] = (double) box.faceX[z][i];
      faceY[z][i] = (double) box.faceY[z][i];
      faceZ[z][i] = (double) box.faceZ[z][i];
      gain[z][i] = box.volume[z][i] > 0 ? (double) (1 / box.volume[z][i]) : 0;
    }
    loadExchange(z);
  }

  @Override
  public void loadExchange(int z) {
    int[] found = losing[z].length == length ? losing[z] : new int[length];
    int count = 0;
    for (int i = 0; i < length; i++) {
      loss[z][i] = (double) box.loss[z][i];
      source[z][i] = (double) box.source[z][i];
      if (box.loss[z][i] > 0) {
        found[count++] = i;
      }
    }
    losing[z] = Arrays.copyOf(found, count);
  }

  @Override
  public void begin(int z) {
    var from = box.enthalpy[z];
    for (int i = 0; i < length; i++) {
      before[z][i] = (double) from[i];
    }
    Arrays.fill(last[z], 0);
    Arrays.fill(beforeLast[z], 0);
    if (box.integral) {
      Arrays.fill(acrossR[z], 1);
    } else {
      resistances(z, acrossR[z], uprightR[z]);
    }
    fronts.begin(z);
  }

  private void resistances(int z, double[] rAcross, double[] rUpright) {
    double[] h = before[z];
    double[] melt = melts[z];
    double[] solid = conductivity[z];
    double[] high = tall[z];
    double start = curve.start;
    double end = curve.end;
    double perWidth = curve.perWidth;
    double half = curve.half;
    double across = curve.across;
    double upright = curve.upright;
    for (int i = 0; i < h.length; i++) {
      double part = (Math.abs(h[i] - start) - Math.abs(h[i] - end)) * perWidth + half;
      double liquid = melt[i] * part;
      rAcross[i] = 1 / (solid[i] + liquid * across);
      rUpright[i] = high[i] / (solid[i] + liquid * upright);
    }
  }

  @Override
  public void connect(int z) {
    faces(faceX[z], acrossR[z], 1, flowsX[z]);
    if (box.ny > 1) {
      faces(faceY[z], acrossR[z], stride, flowsY[z]);
    }
    if (z + 1 < box.nz) {
      double[] r = uprightR[z];
      double[] above = uprightR[z + 1];
      double[] face = faceZ[z];
      double[] flows = flowsZ[z];
      for (int i = 0; i < flows.length; i++) {
        flows[i] = face[i] / (r[i] + above[i]);
      }
    }
    if (box.sharp) {
      sharpen(z, 1, faceX[z], flowsX[z]);
      sharpen(z, stride, faceY[z], flowsY[z]);
      sharpen(z, 0, faceZ[z], flowsZ[z]);
    }
  }

  private void sharpen(int z, int step, double[] face, double[] flows) {
    var mean = step > 0 ? fronts.across(z, step) : fronts.upright(z);
    for (int i = 0; i < flows.length; i++) {
      flows[i] = mean[i] > 0 ? (double) (face[i] * mean[i]) : flows[i];
    }
  }

  private static void faces(double[] face, double[] r, int step, double[] flows) {
    for (int i = 0; i < flows.length - step; i++) {
      flows[i] = face[i] / (r[i] + r[i + step]);
    }
  }

  @Override
  public void fastest(int z, Peak peak) {
    double[] x = flowsX[z];
    double[] y = flowsY[z];
    double[] up = flowsZ[z];
    double[] down = z > 0 ? flowsZ[z - 1] : flowsY[z];
    double below = z > 0 ? 1 : 0;
    int row = box.ny > 1 ? stride : 0;
    double fastest = 0;
    for (int i = Math.max(1, row); i < length - 1; i++) {
      double out = x[i] + x[i - 1] + y[i] + y[i - row] + up[i] + below * down[i] + loss[z][i];
      fastest = Math.max(fastest, out * gain[z][i] * steepest[z][i]);
    }
    peak.raise(fastest);
  }

  @Override
  public void end(int z) {
    var to = box.enthalpy[z];
    for (int i = 0; i < length; i++) {
      to[i] += last[z][i];
    }
  }

  @Override
  public void thermal(int z) {
    temperatures(z, kelvin[z]);
    if (box.integral) {
      integrals(kelvin[z], curve);
    }
  }

  private void temperatures(int z, double[] t) {
    double[] h0 = before[z];
    double[] dh = last[z];
    double[] steep = slope[z];
    double[] melt = melts[z];
    double a = curve.a;
    double b = curve.b;
    double c = curve.c;
    double start = curve.start;
    double end = curve.end;
    for (int i = 0; i < t.length; i++) {
      double h = h0[i] + dh[i];
      double bend = a + b * Math.abs(h - start) + c * Math.abs(h - end);
      t[i] = steep[i] * h + melt[i] * bend;
    }
  }

  /** Temperatures to the integral of the conductivity from the reference, W/m. */
  private static void integrals(double[] t, Curve k) {
    double melt = k.meltAt;
    double mean = k.meanK;
    double half = k.halfMoreK;
    double offset = k.offsetK;
    for (int i = 0; i < t.length; i++) {
      t[i] = mean * t[i] + half * Math.abs(t[i] - melt) + offset;
    }
  }

  @Override
  public void stage(int from, int to, int thread, Coefficients k, Tally[] lostW) {
    Scratch s = scratch[thread];
    double[] above = s.one;
    double[] below = s.other;
    flowUp(from - 1, below);
    for (int z = from; z < to; z++) {
      flowUp(z, above);
      flowsInPlane(z, s);
      for (int i : losing[z]) {
        lostW[z].add(loss[z][i], kelvin[z][i]);
      }
      if (k.isFirst()) {
        first(z, s, above, below, k);
      } else {
        next(z, s, above, below, k);
      }
      double[] swap = last[z];
      last[z] = beforeLast[z];
      beforeLast[z] = swap;
      double[] turn = above;
      above = below;
      below = turn;
    }
  }

  private void flowUp(int z, double[] flow) {
    if (z < 0 || z + 1 >= box.nz) {
      Arrays.fill(flow, 0);
    } else {
      flow(flowsZ[z], kelvin[z], kelvin[z + 1], flow);
    }
  }

  private void flowsInPlane(int z, Scratch s) {
    System.arraycopy(kelvin[z], 1, s.nextT, 0, length - 1);
    flow(flowsX[z], kelvin[z], s.nextT, s.flowX);
    System.arraycopy(s.flowX, 0, s.backX, 1, length - 1);
    if (box.ny > 1) {
      System.arraycopy(kelvin[z], stride, s.rowT, 0, length - stride);
      flow(flowsY[z], kelvin[z], s.rowT, s.flowY);
      System.arraycopy(s.flowY, 0, s.backY, stride, length - stride);
    }
  }

  private static void flow(double[] conductance, double[] t, double[] next, double[] flow) {
    for (int i = 0; i < flow.length; i++) {
      flow[i] = conductance[i] * (next[i] - t[i]);
    }
  }

  private void first(int z, Scratch s, double[] up, double[] down, Coefficients k) {
    double[] x = s.flowX;
    double[] backX = s.backX;
    double[] y = s.flowY;
    double[] backY = s.backY;
    double[] in = source[z];
    double[] out = loss[z];
    double[] t = kelvin[z];
    double[] g = gain[z];
    double[] r0 = rate0[z];
    double[] now = beforeLast[z];
    double step = (double) k.rate();
    for (int i = 0; i < now.length; i++) {
      double flow = (x[i] - backX[i]) + (y[i] - backY[i]) + (up[i] - down[i]);
      double rate = g[i] * (flow + (in[i] - out[i] * t[i]));
      r0[i] = rate;
      now[i] = step * rate;
    }
  }

  private void next(int z, Scratch s, double[] up, double[] down, Coefficients k) {
    double[] x = s.flowX;
    double[] backX = s.backX;
    double[] y = s.flowY;
    double[] backY = s.backY;
    double[] in = source[z];
    double[] out = loss[z];
    double[] t = kelvin[z];
    double[] g = gain[z];
    double[] r0 = rate0[z];
    double[] was = last[z];
    double[] now = beforeLast[z];
    double mu = (double) k.mu();
    double nu = (double) k.nu();
    double step = (double) k.rate();
    double first = (double) k.first();
    for (int i = 0; i < now.length; i++) {
      double flow = (x[i] - backX[i]) + (y[i] - backY[i]) + (up[i] - down[i]);
      double rate = g[i] * (flow + (in[i] - out[i] * t[i]));
      now[i] = mu * was[i] + nu * now[i] + step * rate + first * r0[i];
    }
  }
}

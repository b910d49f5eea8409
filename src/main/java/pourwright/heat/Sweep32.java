package pourwright.heat;

import java.util.Arrays;

/**
 * The flows of a {@link Box} in single precision. Every loop runs over whole planes without a
 * branch, reads every array at the same index (shifted neighbours are copied to scratch arrays
 * first) and takes the kinks of the melting curve as absolute values, so that the compiler can use
 * the machine's vectors. {@code Sweep64} is this text in double precision; a test holds the two
 * together.
 */
@SuppressWarnings("cast") // needed in the other precision
final class Sweep32 implements Sweep {
  private final Box box;
  private final int length;
  private final int stride;
  private final float[][] before;
  private final float[][] kelvin;
  private final float[][] acrossR;
  private final float[][] uprightR;
  private final float[][] flowsX;
  private final float[][] flowsY;
  private final float[][] flowsZ;
  private final float[][] steepest;
  private final float[][] rate0;
  private final float[][] slope;
  private final float[][] melts;
  private final float[][] conductivity;
  private final float[][] tall;
  private final float[][] faceX;
  private final float[][] faceY;
  private final float[][] faceZ;
  private final float[][] gain;
  private final float[][] loss;
  private final float[][] source;
  private final float[][] last;
  private final float[][] beforeLast;
  private final int[][] losing;
  private final Scratch[] scratch;
  private final Curve curve;
  private final Fronts fronts;

  /** The melting curve as {@code T = slope·h + melts·(a + b·|h−start| + c·|h−end|)}. */
  private static final class Curve {
    final float a;
    final float b;
    final float c;
    final float start;
    final float end;
    final float perWidth;
    final float half;
    final float across;
    final float upright;
    final float slope;
    final float steepest;
    final float meltAt;
    final float meanK;
    final float halfMoreK;
    final float offsetK;

    Curve(Box box) {
      var s = box.curve.slopes();
      var wax = box.curve.of();
      slope = (float) (0.5 * (s[0] + s[2]));
      var most = box.integral ? Math.max(wax.solid(), wax.liquid()) : 1;
      steepest = (float) (most * Math.max(s[0], Math.max(s[1], s[2])));
      b = (float) (0.5 * (s[1] - s[0]));
      c = (float) (0.5 * (s[2] - s[1]));
      start = (float) box.curve.startJ();
      end = (float) box.curve.endJ();
      var atStart = wax.fromC() - box.curve.referenceC();
      var curved = 0.5 * (s[0] + s[2]) * box.curve.startJ();
      var width = box.curve.endJ() - box.curve.startJ();
      a = (float) (atStart - curved - 0.5 * (s[2] - s[1]) * width);
      perWidth = (float) (0.5 / width);
      half = (float) 0.5;
      across = (float) (wax.liquid() * box.across - wax.solid());
      upright = (float) (wax.liquid() * box.upright - wax.solid());
      meltAt = (float) atStart;
      meanK = (float) (0.5 * (wax.liquid() + wax.solid()));
      halfMoreK = (float) (0.5 * (wax.liquid() - wax.solid()));
      offsetK = (float) (-0.5 * (wax.liquid() - wax.solid()) * Math.abs(atStart));
    }
  }

  /** One thread's arrays for shifted neighbours and flows. */
  private static final class Scratch {
    final float[] nextT;
    final float[] rowT;
    final float[] flowX;
    final float[] flowY;
    final float[] backX;
    final float[] backY;
    final float[] one;
    final float[] other;

    Scratch(int length) {
      nextT = new float[length];
      rowT = new float[length];
      flowX = new float[length];
      flowY = new float[length];
      backX = new float[length];
      backY = new float[length];
      one = new float[length];
      other = new float[length];
    }
  }

  Sweep32(Box box, int threads) {
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

  private float[][] planes() {
    return new float[box.nz][length];
  }

  @Override
  public void load(int z) {
    for (int i = 0; i < length; i++) {
      melts[z][i] = (float) box.melts[z][i];
      conductivity[z][i] = (float) box.conductivity[z][i];
      slope[z][i] = melts[z][i] > 0 ? curve.slope : (float) (1 / box.heatCapacity[z][i]);
      steepest[z][i] = melts[z][i] > 0 ? curve.steepest : slope[z][i];
      tall[z][i] = (float) box.tall[z][i];
      faceX[z][i] = (float) box.faceX[z][i];
      faceY[z][i] = (float) box.faceY[z][i];
      faceZ[z][i] = (float) box.faceZ[z][i];
      gain[z][i] = box.volume[z][i] > 0 ? (float) (1 / box.volume[z][i]) : 0;
    }
    loadExchange(z);
  }

  @Override
  public void loadExchange(int z) {
    int[] found = losing[z].length == length ? losing[z] : new int[length];
    int count = 0;
    for (int i = 0; i < length; i++) {
      loss[z][i] = (float) box.loss[z][i];
      source[z][i] = (float) box.source[z][i];
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
      before[z][i] = (float) from[i];
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

  private void resistances(int z, float[] rAcross, float[] rUpright) {
    float[] h = before[z];
    float[] melt = melts[z];
    float[] solid = conductivity[z];
    float[] high = tall[z];
    float start = curve.start;
    float end = curve.end;
    float perWidth = curve.perWidth;
    float half = curve.half;
    float across = curve.across;
    float upright = curve.upright;
    for (int i = 0; i < h.length; i++) {
      float part = (Math.abs(h[i] - start) - Math.abs(h[i] - end)) * perWidth + half;
      float liquid = melt[i] * part;
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
      float[] r = uprightR[z];
      float[] above = uprightR[z + 1];
      float[] face = faceZ[z];
      float[] flows = flowsZ[z];
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

  private void sharpen(int z, int step, float[] face, float[] flows) {
    var mean = step > 0 ? fronts.across(z, step) : fronts.upright(z);
    for (int i = 0; i < flows.length; i++) {
      flows[i] = mean[i] > 0 ? (float) (face[i] * mean[i]) : flows[i];
    }
  }

  private static void faces(float[] face, float[] r, int step, float[] flows) {
    for (int i = 0; i < flows.length - step; i++) {
      flows[i] = face[i] / (r[i] + r[i + step]);
    }
  }

  @Override
  public void fastest(int z, Peak peak) {
    float[] x = flowsX[z];
    float[] y = flowsY[z];
    float[] up = flowsZ[z];
    float[] down = z > 0 ? flowsZ[z - 1] : flowsY[z];
    float below = z > 0 ? 1 : 0;
    int row = box.ny > 1 ? stride : 0;
    float fastest = 0;
    for (int i = Math.max(1, row); i < length - 1; i++) {
      float out = x[i] + x[i - 1] + y[i] + y[i - row] + up[i] + below * down[i] + loss[z][i];
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

  private void temperatures(int z, float[] t) {
    float[] h0 = before[z];
    float[] dh = last[z];
    float[] steep = slope[z];
    float[] melt = melts[z];
    float a = curve.a;
    float b = curve.b;
    float c = curve.c;
    float start = curve.start;
    float end = curve.end;
    for (int i = 0; i < t.length; i++) {
      float h = h0[i] + dh[i];
      float bend = a + b * Math.abs(h - start) + c * Math.abs(h - end);
      t[i] = steep[i] * h + melt[i] * bend;
    }
  }

  /** Temperatures to the integral of the conductivity from the reference, W/m. */
  private static void integrals(float[] t, Curve k) {
    float melt = k.meltAt;
    float mean = k.meanK;
    float half = k.halfMoreK;
    float offset = k.offsetK;
    for (int i = 0; i < t.length; i++) {
      t[i] = mean * t[i] + half * Math.abs(t[i] - melt) + offset;
    }
  }

  @Override
  public void stage(int from, int to, int thread, Coefficients k, Tally[] lostW) {
    Scratch s = scratch[thread];
    float[] above = s.one;
    float[] below = s.other;
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
      float[] swap = last[z];
      last[z] = beforeLast[z];
      beforeLast[z] = swap;
      float[] turn = above;
      above = below;
      below = turn;
    }
  }

  private void flowUp(int z, float[] flow) {
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

  private static void flow(float[] conductance, float[] t, float[] next, float[] flow) {
    for (int i = 0; i < flow.length; i++) {
      flow[i] = conductance[i] * (next[i] - t[i]);
    }
  }

  private void first(int z, Scratch s, float[] up, float[] down, Coefficients k) {
    float[] x = s.flowX;
    float[] backX = s.backX;
    float[] y = s.flowY;
    float[] backY = s.backY;
    float[] in = source[z];
    float[] out = loss[z];
    float[] t = kelvin[z];
    float[] g = gain[z];
    float[] r0 = rate0[z];
    float[] now = beforeLast[z];
    float step = (float) k.rate();
    for (int i = 0; i < now.length; i++) {
      float flow = (x[i] - backX[i]) + (y[i] - backY[i]) + (up[i] - down[i]);
      float rate = g[i] * (flow + (in[i] - out[i] * t[i]));
      r0[i] = rate;
      now[i] = step * rate;
    }
  }

  private void next(int z, Scratch s, float[] up, float[] down, Coefficients k) {
    float[] x = s.flowX;
    float[] backX = s.backX;
    float[] y = s.flowY;
    float[] backY = s.backY;
    float[] in = source[z];
    float[] out = loss[z];
    float[] t = kelvin[z];
    float[] g = gain[z];
    float[] r0 = rate0[z];
    float[] was = last[z];
    float[] now = beforeLast[z];
    float mu = (float) k.mu();
    float nu = (float) k.nu();
    float step = (float) k.rate();
    float first = (float) k.first();
    for (int i = 0; i < now.length; i++) {
      float flow = (x[i] - backX[i]) + (y[i] - backY[i]) + (up[i] - down[i]);
      float rate = g[i] * (flow + (in[i] - out[i] * t[i]));
      now[i] = mu * was[i] + nu * now[i] + step * rate + first * r0[i];
    }
  }
}

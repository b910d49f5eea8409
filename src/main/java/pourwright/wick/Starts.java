package pourwright.wick;

import java.util.ArrayList;
import java.util.List;

/**
 * Where searches begin: rows, rings and scattered points (Halton's sequence, so always the same).
 */
final class Starts {
  private final Field field;

  Starts(Field field) {
    this.field = field;
  }

  /** Free starts: rings with and without a middle wick, a row, and scattered ones. */
  List<double[]> free(int wicks, int scattered) {
    List<double[]> starts = new ArrayList<>();
    double a = extent(0)[1];
    double b = extent(Math.PI / 2)[1];
    for (double phase : new double[] {0, 0.5}) {
      starts.add(ring(wicks, 0, phase, 0.55 * a, 0.55 * b));
      if (wicks > 3) {
        starts.add(ring(wicks - 1, 1, phase, 0.65 * a, 0.65 * b));
      }
    }
    starts.add(row(wicks));
    for (int k = 0; k < scattered; k++) {
      starts.add(scatter(wicks, 7 + 31 * k));
    }
    return starts;
  }

  private static double[] ring(int round, int middle, double phase, double a, double b) {
    double[] z = new double[2 * (round + middle)];
    for (int i = 0; i < round; i++) {
      double angle = 2 * Math.PI * (i + phase) / round;
      z[2 * i] = a * Math.cos(angle);
      z[2 * i + 1] = b * Math.sin(angle);
    }
    return z;
  }

  private double[] row(int wicks) {
    double[] ends = extent(0);
    double[] z = new double[2 * wicks];
    for (int i = 0; i < wicks; i++) {
      z[2 * i] = ends[0] + (i + 0.5) / wicks * (ends[1] - ends[0]);
    }
    return z;
  }

  private double[] scatter(int wicks, int seed) {
    double[] u = extent(0);
    double[] v = extent(Math.PI / 2);
    double[] z = new double[2 * wicks];
    int found = 0;
    for (int k = seed; found < wicks && k < seed + 2000; k++) {
      double x = u[0] + halton(k, 2) * (u[1] - u[0]);
      double y = v[0] + halton(k, 3) * (v[1] - v[0]);
      if (field.inside(x, y)) {
        z[2 * found] = x;
        z[2 * found + 1] = y;
        found++;
      }
    }
    return z;
  }

  /** Starts with some wicks on an axis and pairs across it. */
  List<double[]> across(double axis, int onAxis, int pairs, int scattered) {
    double[] u = extent(axis);
    double[] v = extent(axis + Math.PI / 2);
    List<double[]> starts = new ArrayList<>();
    for (double share : new double[] {0.4, 0.6}) {
      double[] z = new double[onAxis + 2 * pairs];
      for (int i = 0; i < onAxis; i++) {
        z[i] = u[0] + (i + 0.5) / onAxis * (u[1] - u[0]);
      }
      for (int k = 0; k < pairs; k++) {
        z[onAxis + 2 * k] = u[0] + (k + 0.5) / pairs * (u[1] - u[0]);
        z[onAxis + 2 * k + 1] = share * v[1];
      }
      starts.add(z);
      if (pairs == 0) {
        break;
      }
    }
    for (int k = 0; k < scattered; k++) {
      starts.add(scatterAcross(axis, onAxis, pairs, 5 + 17 * k));
    }
    return starts;
  }

  private double[] scatterAcross(double axis, int onAxis, int pairs, int seed) {
    double[] u = extent(axis);
    double[] v = extent(axis + Math.PI / 2);
    double[] z = new double[onAxis + 2 * pairs];
    double c = Math.cos(axis);
    double s = Math.sin(axis);
    int k = seed;
    for (int i = 0; i < onAxis; i++) {
      for (int tries = 0; tries < 50; tries++) {
        z[i] = u[0] + halton(k++, 5) * (u[1] - u[0]);
        if (field.inside(c * z[i], s * z[i])) {
          break;
        }
      }
    }
    for (int i = onAxis; i < z.length; i += 2) {
      for (int tries = 0; tries < 50; tries++) {
        z[i] = u[0] + halton(k, 2) * (u[1] - u[0]);
        z[i + 1] = halton(k++, 3) * v[1];
        if (field.inside(c * z[i] - s * z[i + 1], s * z[i] + c * z[i + 1])) {
          break;
        }
      }
    }
    return z;
  }

  /** How far the field goes in a direction and against it. */
  private double[] extent(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < field.corners(); i++) {
      double along = c * field.xs[i] + s * field.ys[i];
      low = Math.min(low, along);
      high = Math.max(high, along);
    }
    return new double[] {low, high};
  }

  private static double halton(int index, int base) {
    double value = 0;
    double share = 1;
    for (int i = index; i > 0; i /= base) {
      share /= base;
      value += share * (i % base);
    }
    return value;
  }
}

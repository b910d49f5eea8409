package pourwright.wick;

import java.util.ArrayList;
import java.util.List;

/**
 * Points from which distances spread: the wicks, and every inner corner of the field with the way
 * that its nearest wick has already come.
 */
final class Sources {
  private final List<double[]> points = new ArrayList<>();
  private final List<Integer> wicks = new ArrayList<>();

  static Sources of(Field field, double[] at, double[][] toReflex) {
    Sources all = new Sources();
    for (int i = 0; i < at.length / 2; i++) {
      all.points.add(new double[] {at[2 * i], at[2 * i + 1], 0});
      all.wicks.add(i);
    }
    for (int v = 0; v < field.reflex.length; v++) {
      int nearest = 0;
      for (int i = 1; i < toReflex.length; i++) {
        nearest = toReflex[i][v] < toReflex[nearest][v] ? i : nearest;
      }
      int corner = field.reflex[v];
      all.points.add(new double[] {field.xs[corner], field.ys[corner], toReflex[nearest][v]});
      all.wicks.add(nearest);
    }
    return all;
  }

  int count() {
    return points.size();
  }

  int wick(int source) {
    return wicks.get(source);
  }

  /** The place that three sources reach alike, by Newton's method; empty when there is none. */
  double[] between(int i, int j, int k) {
    double[] a = points.get(i);
    double[] b = points.get(j);
    double[] c = points.get(k);
    if (wick(i) == wick(j) || wick(j) == wick(k) || wick(i) == wick(k)) {
      return new double[0];
    }
    double[] p = circumcentre(a, b, c);
    if ((a[2] == 0 && b[2] == 0 && c[2] == 0) || p.length == 0) {
      return p;
    }
    for (double[] start : List.of(p, middle(a, b, c))) {
      double[] found = newton(start, a, b, c);
      if (found.length == 2) {
        return found;
      }
    }
    return new double[0];
  }

  private static double[] middle(double[] a, double[] b, double[] c) {
    return new double[] {(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3};
  }

  private static double[] newton(double[] start, double[] a, double[] b, double[] c) {
    double x = start[0];
    double y = start[1];
    for (int step = 0; step < 25; step++) {
      double da = Math.max(1e-12, Field.way(x - a[0], y - a[1]));
      double db = Math.max(1e-12, Field.way(x - b[0], y - b[1]));
      double dc = Math.max(1e-12, Field.way(x - c[0], y - c[1]));
      double f = da + a[2] - db - b[2];
      double g = da + a[2] - dc - c[2];
      if (Math.abs(f) + Math.abs(g) < 1e-12) {
        return new double[] {x, y};
      }
      double fx = (x - a[0]) / da - (x - b[0]) / db;
      double fy = (y - a[1]) / da - (y - b[1]) / db;
      double gx = (x - a[0]) / da - (x - c[0]) / dc;
      double gy = (y - a[1]) / da - (y - c[1]) / dc;
      double det = fx * gy - fy * gx;
      if (Math.abs(det) < 1e-12) {
        break;
      }
      double dx = (f * gy - g * fy) / det;
      double dy = (g * fx - f * gx) / det;
      double size = Field.way(dx, dy);
      double keep = size > 0.3 ? 0.3 / size : 1;
      x -= keep * dx;
      y -= keep * dy;
    }
    return new double[0];
  }

  private static double[] circumcentre(double[] a, double[] b, double[] c) {
    double bx = b[0] - a[0];
    double by = b[1] - a[1];
    double cx = c[0] - a[0];
    double cy = c[1] - a[1];
    double det = 2 * (bx * cy - by * cx);
    if (Math.abs(det) < 1e-12) {
      return new double[0];
    }
    double b2 = bx * bx + by * by;
    double c2 = cx * cx + cy * cy;
    return new double[] {a[0] + (cy * b2 - by * c2) / det, a[1] + (bx * c2 - cx * b2) / det};
  }
}

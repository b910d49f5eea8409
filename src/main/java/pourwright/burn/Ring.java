package pourwright.burn;

import java.util.List;
import pourwright.shape.Point;

/** A closed polygon that a section of the cavity is measured from. Lengths in mm. */
final class Ring {
  private final double[] x;
  private final double[] y;

  Ring(List<Point> points) {
    int n = points.size();
    x = new double[n];
    y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = points.get(i).xMm();
      y[i] = points.get(i).yMm();
    }
  }

  double perimeter() {
    double sum = 0;
    for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
      sum += Math.hypot(x[i] - x[j], y[i] - y[j]);
    }
    return sum;
  }

  double halfLength() {
    return farthest(x);
  }

  double halfWidth() {
    return farthest(y);
  }

  private static double farthest(double[] v) {
    double far = 0;
    for (double a : v) {
      far = Math.max(far, Math.abs(a));
    }
    return far;
  }

  /** Distance to the curve, positive inside; with the unit vector from the curve outward. */
  double[] clearance(double px, double py) {
    double best = Double.POSITIVE_INFINITY;
    double nearX = 0;
    double nearY = 0;
    boolean inside = false;
    for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
      double ex = x[i] - x[j];
      double ey = y[i] - y[j];
      double wx = px - x[j];
      double wy = py - y[j];
      double share = Math.max(0, Math.min(1, (wx * ex + wy * ey) / (ex * ex + ey * ey)));
      double dx = wx - share * ex;
      double dy = wy - share * ey;
      double square = dx * dx + dy * dy;
      if (square < best) {
        best = square;
        nearX = dx;
        nearY = dy;
      }
      if (y[i] > py != y[j] > py && px < ex * (py - y[j]) / ey + x[j]) {
        inside = !inside;
      }
    }
    double distance = Math.sqrt(best);
    double sign = inside ? -1 : 1;
    double scale = distance > 0 ? sign / distance : 0;
    return new double[] {-sign * distance, nearX * scale, nearY * scale};
  }
}

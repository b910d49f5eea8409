package pourwright.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * Outlines with an equation {@code |x/a|^n + |y/b|^n = 1}: superellipse, ellipse, circle. Ovals are
 * ruled among themselves by eccentric angle: {@code x = a·cos^p, y = b·sin^p, p = 2/n}.
 *
 * <p>Area {@code 4ab·Γ(1+1/n)²/Γ(1+2/n)}. Source: NIST Digital Library of Mathematical Functions,
 * 5.12 (beta function) and 19.9 (perimeter of the ellipse by the arithmetic-geometric mean).
 */
public sealed interface Oval extends Outline permits Circle, Ellipse, Superellipse {

  /** Half the length, a, in mm. */
  double halfLengthMm();

  /** Half the width, b, in mm. */
  double halfWidthMm();

  /** n: 2 is an ellipse, larger is squarer. */
  double exponent();

  @Override
  default double lengthMm() {
    return 2 * halfLengthMm();
  }

  @Override
  default double widthMm() {
    return 2 * halfWidthMm();
  }

  /** The point at an eccentric angle in radians. */
  default Point at(double eccentric) {
    double p = 2 / exponent();
    double c = Math.cos(eccentric);
    double s = Math.sin(eccentric);
    return new Point(
        halfLengthMm() * Math.signum(c) * Math.pow(Math.abs(c), p),
        halfWidthMm() * Math.signum(s) * Math.pow(Math.abs(s), p));
  }

  @Override
  default double radiusMm(double angle) {
    return Math.pow(implicit(angle), -1 / exponent());
  }

  private double implicit(double angle) {
    double n = exponent();
    return Math.pow(Math.abs(Math.cos(angle)) / halfLengthMm(), n)
        + Math.pow(Math.abs(Math.sin(angle)) / halfWidthMm(), n);
  }

  @Override
  default double radiusSlopeMm(double angle) {
    double n = exponent();
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    double a = halfLengthMm();
    double b = halfWidthMm();
    double byC = Math.pow(Math.abs(c) / a, n - 1) * Math.signum(c) / a;
    double byS = Math.pow(Math.abs(s) / b, n - 1) * Math.signum(s) / b;
    return -Math.pow(implicit(angle), -1 / n - 1) * (byS * c - byC * s);
  }

  @Override
  default double clearanceMm(double xMm, double yMm) {
    // an oval is symmetric about both axes: the nearest point lies in the point's own quarter
    double x = Math.abs(xMm);
    double y = Math.abs(yMm);
    int coarse = 64;
    double step = Math.PI / 2 / coarse;
    int nearest = 0;
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= coarse; i++) {
      double square = squareTo(i * step, x, y);
      if (square < best) {
        best = square;
        nearest = i;
      }
    }
    double low = Math.max(0, nearest - 1) * step;
    double high = Math.min(coarse, nearest + 1) * step;
    for (int i = 0; i < 80 && high - low > 1e-15; i++) {
      double u = low + (high - low) / 3;
      double v = high - (high - low) / 3;
      if (squareTo(u, x, y) < squareTo(v, x, y)) {
        high = v;
      } else {
        low = u;
      }
    }
    best = Math.sqrt(Math.min(best, squareTo((low + high) / 2, x, y)));
    return contains(xMm, yMm) ? best : -best;
  }

  private double squareTo(double eccentric, double x, double y) {
    Point p = at(eccentric);
    double dx = p.xMm() - x;
    double dy = p.yMm() - y;
    return dx * dx + dy * dy;
  }

  @Override
  default List<Point> polyline(double toleranceMm) {
    List<Point> points = new ArrayList<>();
    int parts = 16;
    for (int i = 0; i < parts; i++) {
      double from = 2 * Math.PI * i / parts;
      double to = 2 * Math.PI * (i + 1) / parts;
      points.add(at(from));
      addBetween(from, to, toleranceMm, 0, points);
    }
    return points;
  }

  private void addBetween(double from, double to, double toleranceMm, int depth, List<Point> into) {
    double middle = (from + to) / 2;
    Point chord = at(from).towards(at(to), 0.5);
    Point curve = at(middle);
    double squareness = Math.abs(Math.log(exponent() / 2));
    boolean fine = depth >= (squareness > 0.5 ? 2 : 0);
    if ((fine && curve.minus(chord).length() <= toleranceMm) || depth > 30) {
      return;
    }
    addBetween(from, middle, toleranceMm, depth + 1, into);
    into.add(curve);
    addBetween(middle, to, toleranceMm, depth + 1, into);
  }

  @Override
  default double[] smoothBetween() {
    double[] ends = new double[9];
    for (int i = 0; i <= 8; i++) {
      ends[i] = (i - 4) * Math.PI / 4;
    }
    return ends;
  }
}

package pourwright.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * An outline with ribs and flutes between them: {@code r(θ) = r₀(θ) − d/2·(1 − cos nθ)}, so that
 * the crests lie on the outline itself, one of them on the x axis, and the flutes are cut d deep.
 *
 * <p>About a circle of radius R the area is {@code π((R − d/2)² + d²/8)}; all else is by quadrature
 * to {@link Quadrature#RELATIVE_TOLERANCE}.
 */
public final class Ribbed implements Outline {
  /** More ribs than can be cast. */
  public static final int RIBS_MAX = 180;

  private final Outline smooth;
  private final int ribs;
  private final double depthMm;
  private final double[] ends;

  /**
   * @param smooth an outline of one of the named forms, neither traced nor ribbed
   * @param ribs from 3 to {@value #RIBS_MAX}
   * @param depthMm of the flutes, in mm, above zero and at most half the least radius
   * @throws OutOfRange when the ribs do not fit, or would move the centroid
   */
  public Ribbed(Outline smooth, int ribs, double depthMm) {
    Check.between("ribs", ribs, 3, RIBS_MAX);
    Check.positive("rib_depth_mm", depthMm);
    this.smooth = smooth;
    this.ribs = ribs;
    this.depthMm = depthMm;
    if (!(smooth instanceof Circle) && commonDivisor(symmetry(smooth), ribs) < 2) {
      throw new OutOfRange(
          "ribs",
          ribs + " ribs do not go round this outline evenly",
          "take an even number, or a multiple of the polygon's sides");
    }
    double[] crests =
        IntStream.rangeClosed(-ribs, ribs).mapToDouble(i -> i * Math.PI / ribs).toArray();
    this.ends =
        DoubleStream.concat(Arrays.stream(smooth.smoothBetween()), Arrays.stream(crests))
            .sorted()
            .distinct()
            .toArray();
    double least = Arrays.stream(ends).map(smooth::radiusMm).min().orElse(0);
    if (depthMm > least / 2) {
      throw new OutOfRange(
          "rib_depth_mm",
          "flutes " + depthMm + " mm deep leave too little in the middle",
          "at most half the least radius, " + least / 2 + " mm");
    }
  }

  /** How often the outline falls on itself in one turn. */
  private static int symmetry(Outline outline) {
    if (outline instanceof RegularPolygon polygon) {
      return polygon.sides();
    }
    if (outline instanceof Traced || outline instanceof Ribbed || outline instanceof Turned) {
      throw new OutOfRange(
          "ribs", "ribs go on a named form only", "trace the ribs where the outline is traced");
    }
    return 2;
  }

  private static int commonDivisor(int a, int b) {
    return b == 0 ? a : commonDivisor(b, a % b);
  }

  @Override
  public double areaMm2() {
    if (smooth instanceof Circle circle) {
      double mean = (circle.diameterMm() - depthMm) / 2;
      return Math.PI * (mean * mean + depthMm * depthMm / 8);
    }
    return Quadrature.over(a -> radiusMm(a) * radiusMm(a) / 2, ends);
  }

  @Override
  public double perimeterMm() {
    return Quadrature.over(a -> Math.hypot(radiusMm(a), radiusSlopeMm(a)), ends);
  }

  @Override
  public double lengthMm() {
    return Extent.of(polyline(0.001), Point::xMm);
  }

  @Override
  public double widthMm() {
    return Extent.of(polyline(0.001), Point::yMm);
  }

  @Override
  public double radiusMm(double angle) {
    return smooth.radiusMm(angle) - depthMm / 2 * (1 - Math.cos(ribs * angle));
  }

  @Override
  public double radiusSlopeMm(double angle) {
    return smooth.radiusSlopeMm(angle) - depthMm / 2 * ribs * Math.sin(ribs * angle);
  }

  /** By halving between the nearest of many points; to 1e-6 mm. */
  @Override
  public double clearanceMm(double xMm, double yMm) {
    Point from = new Point(xMm, yMm);
    double best = Double.POSITIVE_INFINITY;
    for (int i = 1; i < ends.length; i++) {
      int parts = Math.max(4, (int) Math.ceil((ends[i] - ends[i - 1]) * 24));
      double step = (ends[i] - ends[i - 1]) / parts;
      for (int j = 0; j < parts; j++) {
        double low = ends[i - 1] + j * step;
        double near = from.minus(at(low + step / 2)).length();
        if (near - 2 * step * smooth.radiusMm(low) * (1 + ribs) < best) {
          best = Math.min(best, nearest(from, low, low + step));
        }
      }
    }
    return contains(xMm, yMm) ? best : -best;
  }

  private double nearest(Point from, double start, double end) {
    double low = start;
    double high = end;
    for (int i = 0; i < 60; i++) {
      double u = low + (high - low) / 3;
      double v = high - (high - low) / 3;
      if (at(u).minus(from).length() < at(v).minus(from).length()) {
        high = v;
      } else {
        low = u;
      }
    }
    return at((low + high) / 2).minus(from).length();
  }

  private Point at(double angle) {
    return Point.polar(radiusMm(angle), angle);
  }

  @Override
  public List<Point> polyline(double toleranceMm) {
    List<Point> points = new ArrayList<>();
    for (int i = 1; i < ends.length; i++) {
      if (ends[i] - ends[i - 1] > 1e-9) {
        points.add(at(ends[i - 1]));
        addBetween(ends[i - 1], ends[i], toleranceMm, 0, points);
      }
    }
    return points;
  }

  private void addBetween(double from, double to, double toleranceMm, int depth, List<Point> into) {
    double middle = (from + to) / 2;
    Point chord = at(from).towards(at(to), 0.5);
    Point curve = at(middle);
    if ((depth >= 2 && curve.minus(chord).length() <= toleranceMm) || depth > 24) {
      return;
    }
    addBetween(from, middle, toleranceMm, depth + 1, into);
    into.add(curve);
    addBetween(middle, to, toleranceMm, depth + 1, into);
  }

  @Override
  public Ribbed scaled(double factor) {
    return new Ribbed(smooth.scaled(factor), ribs, depthMm * factor);
  }

  @Override
  public double[] smoothBetween() {
    return ends.clone();
  }

  @Override
  public boolean equals(@org.jspecify.annotations.Nullable Object other) {
    return other instanceof Ribbed that
        && smooth.equals(that.smooth)
        && ribs == that.ribs
        && depthMm == that.depthMm;
  }

  @Override
  public int hashCode() {
    return smooth.hashCode() * 31 + ribs;
  }

  @Override
  public String toString() {
    return "Ribbed[" + smooth + ", " + ribs + " ribs, " + depthMm + " mm deep]";
  }
}

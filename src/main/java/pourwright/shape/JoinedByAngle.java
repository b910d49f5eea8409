package pourwright.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import pourwright.quantity.OutOfRange;

/** Two outlines joined by equal polar angle about their centroids, one above the other. */
final class JoinedByAngle implements Joined {
  private final Outline bottom;
  private final Outline top;
  private final double[] smoothBetween;

  JoinedByAngle(Outline bottom, Outline top) {
    this.bottom = bottom;
    this.top = top;
    if (!bottom.isStar() || !top.isStar()) {
      throw new OutOfRange(
          bottom.isStar() ? "top" : "bottom",
          "a ray from the middle meets the traced outline more than once, so walls to an outline of"
              + " another kind cannot be drawn",
          "trace bottom and top with equally many points, or make the walls straight");
    }
    this.smoothBetween =
        DoubleStream.concat(
                Arrays.stream(bottom.smoothBetween()), Arrays.stream(top.smoothBetween()))
            .sorted()
            .distinct()
            .toArray();
  }

  @Override
  public double mixedMm2() {
    if (alike()) {
      return Math.sqrt(bottom.areaMm2() * top.areaMm2());
    }
    return Quadrature.over(a -> bottom.radiusMm(a) * top.radiusMm(a) / 2, smoothBetween);
  }

  private boolean alike() {
    return bottom instanceof RegularPolygon below
        && top instanceof RegularPolygon above
        && below.sides() == above.sides()
        && below.cornerMm() == 0
        && above.cornerMm() == 0;
  }

  @Override
  public double sideMm2(double heightMm, double turn, double s) {
    return Quadrature.over(a -> strip(a, heightMm, turn, s), smoothBetween);
  }

  /** In the frame that turns with the angle: x outwards, y the way the angle grows. */
  private double strip(double angle, double heightMm, double turn, double s) {
    double b = bottom.radiusMm(angle);
    double t = radiusMm(angle, s);
    double slopeB = bottom.radiusSlopeMm(angle);
    double slopeT = slopeB + s * (top.radiusSlopeMm(angle) - slopeB);
    return Ruled.strip(
        new Point(b, 0),
        new Point(t, 0),
        new Point(slopeB, b),
        new Point(slopeT, t),
        s * heightMm,
        s * turn);
  }

  @Override
  public double radiusMm(double angle, double s) {
    return (1 - s) * bottom.radiusMm(angle) + s * top.radiusMm(angle);
  }

  @Override
  public boolean contains(double xMm, double yMm, double s) {
    Point point = new Point(xMm, yMm);
    return point.length() < radiusMm(point.angle(), s);
  }

  @Override
  public List<Point> section(double s, double toleranceMm) {
    List<Point> points = new ArrayList<>();
    for (int i = 1; i < smoothBetween.length; i++) {
      double from = smoothBetween[i - 1];
      double step = smoothBetween[i] - from;
      int parts = (int) Math.ceil(step / (Math.PI / 180));
      for (int j = 0; step > 1e-9 && j < parts; j++) {
        double angle = from + step * j / parts;
        points.add(Point.polar(radiusMm(angle, s), angle));
      }
    }
    return points;
  }

  @Override
  public Outline outlineAt(double s) {
    return s == 1 ? top : Traced.through(section(s, 0.01));
  }
}

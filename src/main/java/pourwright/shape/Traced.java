package pourwright.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * An outline traced by points, straight from one to the next. Kept counterclockwise about its
 * centroid; where it lay before is {@link #centroid()}.
 */
public final class Traced extends Walled {
  /** More points than a drawn outline needs. */
  public static final int POINTS_MAX = 4000;

  private final List<Point> corners;
  private final Point centroid;
  private final boolean givenClockwise;

  private Traced(List<Point> corners, Point centroid, boolean givenClockwise) {
    super(Walls.through(corners), List.of(corners, centroid));
    this.corners = List.copyOf(corners);
    this.centroid = centroid;
    this.givenClockwise = givenClockwise;
  }

  /**
   * An outline through points in order, either way round, the first not repeated.
   *
   * @param points from 3 to {@value #POINTS_MAX}
   * @throws OutOfRange when there are too few or too many, when two neighbours are the same, or
   *     when the outline crosses itself or encloses nothing
   */
  public static Traced through(List<Point> points) {
    Check.between("points_mm", points.size(), 3, POINTS_MAX);
    points.forEach(p -> Check.finite("points_mm", p.xMm() + p.yMm()));
    List<Point> turning = new ArrayList<>(points);
    double twiceArea = twiceArea(points);
    boolean clockwise = twiceArea < 0;
    if (clockwise) {
      Collections.reverse(turning.subList(1, turning.size()));
    }
    refuseFaults(turning, Math.abs(twiceArea));
    Point centre = centroid(turning);
    return new Traced(turning.stream().map(p -> p.minus(centre)).toList(), centre, clockwise);
  }

  private static void refuseFaults(List<Point> points, double twiceArea) {
    int n = points.size();
    double reach =
        points.stream().mapToDouble(p -> p.minus(points.get(0)).length()).max().orElse(0);
    if (twiceArea <= 1e-12 * reach * reach) {
      throw new OutOfRange("points_mm", "the outline encloses nothing", "check the points");
    }
    for (int i = 0; i < n; i++) {
      if (points.get(i).equals(points.get((i + 1) % n))) {
        throw new OutOfRange(
            "points_mm",
            "point " + (i + 1) + " and the next are the same",
            "leave one out; the first point is not repeated at the end");
      }
    }
    for (int i = 0; i < n; i++) {
      for (int j = i + 2; j < n; j++) {
        if (!(i == 0 && j == n - 1) && meet(points, i, j)) {
          throw new OutOfRange(
              "points_mm",
              "the outline crosses itself between points " + (i + 1) + " and " + (j + 1),
              "give the points in order round the shape");
        }
      }
    }
  }

  private static boolean meet(List<Point> points, int i, int j) {
    int n = points.size();
    Point a = points.get(i);
    Point b = points.get((i + 1) % n);
    Point c = points.get(j);
    Point d = points.get((j + 1) % n);
    double cSide = b.minus(a).cross(c.minus(a));
    double dSide = b.minus(a).cross(d.minus(a));
    double aSide = d.minus(c).cross(a.minus(c));
    double bSide = d.minus(c).cross(b.minus(c));
    boolean crosses = cSide * dSide < 0 && aSide * bSide < 0;
    return crosses
        || (cSide == 0 && on(a, b, c))
        || (dSide == 0 && on(a, b, d))
        || (aSide == 0 && on(c, d, a))
        || (bSide == 0 && on(c, d, b));
  }

  private static boolean on(Point a, Point b, Point p) {
    return p.minus(a).dot(p.minus(b)) <= 0;
  }

  private static double twiceArea(List<Point> points) {
    double sum = 0;
    Point first = points.get(0);
    for (int i = 1; i + 1 < points.size(); i++) {
      sum += points.get(i).minus(first).cross(points.get(i + 1).minus(first));
    }
    return sum;
  }

  private static Point centroid(List<Point> points) {
    Point first = points.get(0);
    Point sum = Point.ORIGIN;
    for (int i = 1; i + 1 < points.size(); i++) {
      Point a = points.get(i).minus(first);
      Point b = points.get(i + 1).minus(first);
      sum = sum.plus(a.plus(b).times(a.cross(b)));
    }
    return first.plus(sum.times(1 / (3 * twiceArea(points))));
  }

  /** The corners about the centroid, counterclockwise. */
  public List<Point> corners() {
    return corners;
  }

  /** True when the points were given clockwise. */
  boolean givenClockwise() {
    return givenClockwise;
  }

  @Override
  public Point centroid() {
    return centroid;
  }

  @Override
  public double lengthMm() {
    return corners.stream().mapToDouble(Point::xMm).max().orElse(0)
        - corners.stream().mapToDouble(Point::xMm).min().orElse(0);
  }

  @Override
  public double widthMm() {
    return corners.stream().mapToDouble(Point::yMm).max().orElse(0)
        - corners.stream().mapToDouble(Point::yMm).min().orElse(0);
  }

  @Override
  public boolean contains(double xMm, double yMm) {
    return walls().surrounds(new Point(xMm, yMm));
  }

  @Override
  public Traced scaled(double factor) {
    Check.positive("factor", factor);
    return new Traced(
        corners.stream().map(p -> p.times(factor)).toList(), centroid, givenClockwise);
  }
}

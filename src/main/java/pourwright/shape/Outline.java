package pourwright.shape;

import java.util.List;

/**
 * A closed plane curve that does not cross itself: the plan of a mold, a cavity or a vessel at one
 * height. All methods but {@link #centroid()} speak in coordinates whose origin is the outline's
 * centroid, x along its length, counterclockwise; lengths in millimetres, angles in radians.
 *
 * <p>Maths, sources and tolerances: docs/models/shape.md.
 */
public sealed interface Outline permits Oval, Walled, Ribbed, Turned {

  /** Enclosed area, in mm². Exact but for ribs on other forms than a circle. */
  double areaMm2();

  /** Length of the curve, in mm. Exact but for superellipses and ribs, there by quadrature. */
  double perimeterMm();

  /**
   * Where the centroid lay in the coordinates that the outline was given in. The origin for all but
   * traced outlines.
   */
  default Point centroid() {
    return Point.ORIGIN;
  }

  /** Extent along x, in mm. */
  double lengthMm();

  /** Extent along y, in mm. */
  double widthMm();

  /** True when every ray from the centroid meets the curve once; false only for traced ones. */
  default boolean isStar() {
    return true;
  }

  /**
   * Distance from the centroid to the curve in the direction {@code angle}, in mm; the farthest one
   * where a traced outline is met more than once.
   */
  double radiusMm(double angle);

  /** Derivative of {@link #radiusMm} by the angle, in mm per radian; any side's at a corner. */
  double radiusSlopeMm(double angle);

  /** True for points inside, with the origin at the centroid. */
  default boolean contains(double xMm, double yMm) {
    double r2 = xMm * xMm + yMm * yMm;
    if (r2 == 0) {
      return true;
    }
    double radius = radiusMm(Math.atan2(yMm, xMm));
    return r2 < radius * radius;
  }

  /**
   * Distance from a point to the curve, in mm: positive inside, negative outside. Exact for circles
   * and for outlines of lines and arcs, to 1e-6 mm for ellipses and superellipses.
   */
  double clearanceMm(double xMm, double yMm);

  /**
   * Points of the curve, counterclockwise, the first not repeated, none of whose chords is farther
   * than the tolerance from the curve. Corners are among them.
   *
   * @param toleranceMm greater than zero
   */
  List<Point> polyline(double toleranceMm);

  /** The same outline, larger or smaller about its centroid. */
  Outline scaled(double factor);

  /**
   * Angles from −π to π between which {@link #radiusMm} is smooth, in order, both ends included.
   */
  double[] smoothBetween();
}

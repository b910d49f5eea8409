package pourwright.shape;

/**
 * A point or an arrow in the plane of an outline.
 *
 * @param xMm along the outline's length, in millimetres
 * @param yMm across it, in millimetres
 */
public record Point(double xMm, double yMm) {

  /** The centre of an outline. */
  public static final Point ORIGIN = new Point(0, 0);

  /** The point at a distance from the origin in the direction of an angle in radians. */
  public static Point polar(double radiusMm, double angle) {
    return new Point(radiusMm * Math.cos(angle), radiusMm * Math.sin(angle));
  }

  /** This and the other, added. */
  public Point plus(Point other) {
    return new Point(xMm + other.xMm, yMm + other.yMm);
  }

  /** From the other to this. */
  public Point minus(Point other) {
    return new Point(xMm - other.xMm, yMm - other.yMm);
  }

  /** Stretched from the origin. */
  public Point times(double factor) {
    return new Point(factor * xMm, factor * yMm);
  }

  /** The cross product, twice the area of the triangle with the origin; positive turning left. */
  public double cross(Point other) {
    return xMm * other.yMm - yMm * other.xMm;
  }

  /** The inner product. */
  public double dot(Point other) {
    return xMm * other.xMm + yMm * other.yMm;
  }

  /** Distance from the origin. */
  public double length() {
    return Math.hypot(xMm, yMm);
  }

  /** Direction from the origin, in radians from −π to π, counterclockwise from x. */
  public double angle() {
    return Math.atan2(yMm, xMm);
  }

  /** The point a share {@code s} of the way to the other. */
  public Point towards(Point other, double s) {
    return new Point(xMm + s * (other.xMm - xMm), yMm + s * (other.yMm - yMm));
  }

  /** Turned about the origin, counterclockwise, by an angle in radians. */
  public Point turned(double by) {
    double c = Math.cos(by);
    double s = Math.sin(by);
    return new Point(c * xMm - s * yMm, s * xMm + c * yMm);
  }
}

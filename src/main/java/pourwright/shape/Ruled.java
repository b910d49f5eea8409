package pourwright.shape;

/** The strip of a ruled surface that belongs to one parameter. */
final class Ruled {
  private Ruled() {}

  /**
   * Area of the strip per unit of parameter between the curve point {@code b} below and {@code t}
   * above, whose speeds by the parameter are given: ∫|c_u × c_s| ds, s from 0 to 1.
   */
  static double strip(Point b, Point t, Point speedB, Point speedT, double heightMm) {
    Point lean = t.minus(b);
    Point gain = speedT.minus(speedB);
    double h2 = heightMm * heightMm;
    double beta = speedB.cross(lean);
    double gamma = gain.cross(lean);
    double c0 = h2 * speedB.dot(speedB) + beta * beta;
    double c1 = 2 * (h2 * speedB.dot(gain) + beta * gamma);
    double c2 = h2 * gain.dot(gain) + gamma * gamma;
    if (Math.abs(c1) + c2 <= 1e-14 * c0) {
      return Math.sqrt(c0);
    }
    return Quadrature.integrate(s -> Math.sqrt(Math.max(0, c0 + s * (c1 + s * c2))), 0, 1);
  }
}

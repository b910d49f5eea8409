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

  /**
   * The same where the section also turns on its way up: by {@code turn} radians from below to
   * above, both points and speeds given as if it did not. The wall point moves by (lean + turn·Jp),
   * so its cross product with the curve's speed p_u is p_u×lean + turn·p_u·p.
   */
  static double strip(Point b, Point t, Point speedB, Point speedT, double heightMm, double turn) {
    if (turn == 0) {
      return strip(b, t, speedB, speedT, heightMm);
    }
    Point lean = t.minus(b);
    Point gain = speedT.minus(speedB);
    double h2 = heightMm * heightMm;
    return Quadrature.integrate(
        s -> {
          Point speed = speedB.plus(gain.times(s));
          double across = speed.cross(lean) + turn * speed.dot(b.plus(lean.times(s)));
          return Math.sqrt(h2 * speed.dot(speed) + across * across);
        },
        0,
        1);
  }
}

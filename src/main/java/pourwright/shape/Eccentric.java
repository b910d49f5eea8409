package pourwright.shape;

import org.hipparchus.special.Beta;

/**
 * Two ovals ruled by equal eccentric angle. One octant is run through by {@code φ = w^k}, with k so
 * large that neither curve's speed is infinite at the axis; the other octant of the quadrant is the
 * same with the axes exchanged; the remaining quadrants are mirror images.
 */
final class Eccentric {
  private Eccentric() {}

  /** Where an oval is and how fast it moves as w grows, near the x axis. */
  private record Octant(double a, double b, double p, double k) {
    Point at(double w) {
      double phi = Math.pow(w, k);
      double y = Math.pow(w, k * p) * Math.pow(sinc(phi), p);
      return new Point(a * Math.pow(Math.cos(phi), p), b * y);
    }

    Point speed(double w) {
      double phi = Math.pow(w, k);
      double cos = Math.cos(phi);
      double dx = -p * k * Math.pow(cos, p - 1) * Math.sin(phi) * Math.pow(w, k - 1);
      double dy = p * k * Math.pow(w, k * p - 1) * Math.pow(sinc(phi), p - 1) * cos;
      return new Point(a * dx, b * dy);
    }
  }

  private static double sinc(double x) {
    return x < 1e-5 ? 1 - x * x / 6 : Math.sin(x) / x;
  }

  static double perimeterMm(Oval oval) {
    return sideMm2(oval, oval, 1, 0, 1);
  }

  /**
   * Area of the ruled surface between two ovals {@code heightMm} apart up to a share, in mm². An
   * octant and its mirror image see a turn of the section from opposite sides.
   */
  static double sideMm2(Oval bottom, Oval top, double heightMm, double turn, double s) {
    if (turn != 0) {
      return (quarters(bottom, top, heightMm, turn, s) + quarters(bottom, top, heightMm, -turn, s))
          / 2;
    }
    return quarters(bottom, top, heightMm, 0, s);
  }

  private static double quarters(Oval bottom, Oval top, double heightMm, double turn, double s) {
    double p1 = 2 / bottom.exponent();
    double p2 = 2 / top.exponent();
    double k = Math.max(1, 1 / Math.min(p1, p2));
    double a1 = bottom.halfLengthMm();
    double b1 = bottom.halfWidthMm();
    double a2 = top.halfLengthMm();
    double b2 = top.halfWidthMm();
    double end = Math.pow(Math.PI / 4, 1 / k);
    Octant xBelow = new Octant(a1, b1, p1, k);
    Octant xAbove = new Octant(a2, b2, p2, k);
    Octant yBelow = new Octant(b1, a1, p1, k);
    Octant yAbove = new Octant(b2, a2, p2, k);
    return 4
        * Quadrature.integrate(
            w ->
                strip(xBelow, xAbove, w, heightMm, turn, s)
                    + strip(yBelow, yAbove, w, heightMm, -turn, s),
            0,
            end);
  }

  private static double strip(
      Octant below, Octant above, double w, double heightMm, double turn, double s) {
    Point b = below.at(w);
    Point speed = below.speed(w);
    Point t = b.towards(above.at(w), s);
    return Ruled.strip(b, t, speed, speed.towards(above.speed(w), s), s * heightMm, s * turn);
  }

  /**
   * Mixed area ½·∮½(B×T′ + T×B′) of two ovals, in closed form by the beta function.
   *
   * <p>Source: DLMF 5.12.2, {@code ∫cos^α·sin^β = ½B((α+1)/2, (β+1)/2)} over a quadrant.
   */
  static double mixedMm2(Oval bottom, Oval top) {
    double p1 = 2 / bottom.exponent();
    double p2 = 2 / top.exponent();
    double cross =
        bottom.halfLengthMm() * top.halfWidthMm() + bottom.halfWidthMm() * top.halfLengthMm();
    return cross * (p2 / 2 * beta(1 + p1 / 2, p2 / 2) + p1 / 2 * beta(1 + p2 / 2, p1 / 2));
  }

  private static double beta(double a, double b) {
    return Math.exp(Beta.logBeta(a, b));
  }
}

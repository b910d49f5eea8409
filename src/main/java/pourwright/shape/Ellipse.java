package pourwright.shape;

import pourwright.quantity.Check;

/**
 * An ellipse.
 *
 * @param lengthMm the whole axis along x, in mm, greater than zero
 * @param widthMm the whole axis along y, in mm, greater than zero
 */
public record Ellipse(double lengthMm, double widthMm) implements Oval {

  /** Checks both axes. */
  public Ellipse {
    Check.positive("length_mm", lengthMm);
    Check.positive("width_mm", widthMm);
  }

  @Override
  public double halfLengthMm() {
    return lengthMm / 2;
  }

  @Override
  public double halfWidthMm() {
    return widthMm / 2;
  }

  @Override
  public double exponent() {
    return 2;
  }

  @Override
  public double areaMm2() {
    return Math.PI / 4 * lengthMm * widthMm;
  }

  /**
   * By the arithmetic-geometric mean, to the last digits of a double.
   *
   * <p>Source: DLMF 19.9.9 with 19.8.6: {@code 4aE = 2π(a² − Σ 2^(n−1)·c_n²)/M(a,b)}.
   */
  @Override
  public double perimeterMm() {
    double a = halfLengthMm();
    double b = halfWidthMm();
    double sum = 0.5 * (a * a + b * b);
    double weight = 0.5;
    while (Math.abs(a - b) > 1e-15 * (a + b)) {
      double c = (a - b) / 2;
      double mean = (a + b) / 2;
      b = Math.sqrt(a * b);
      a = mean;
      weight *= 2;
      sum -= weight * c * c;
    }
    return 2 * Math.PI * sum / a;
  }

  /**
   * Own derivation: the nearest point of the ellipse is {@code x = a² x0/(s + a²), y = b² y0/(s +
   * b²)}, the multiplier s the only root of a falling function; bisection on {@code t = 1 + s/b²}.
   */
  @Override
  public double clearanceMm(double xMm, double yMm) {
    boolean upright = widthMm > lengthMm;
    double a = Math.max(halfLengthMm(), halfWidthMm());
    double b = Math.min(halfLengthMm(), halfWidthMm());
    double x = Math.abs(upright ? yMm : xMm);
    double y = Math.abs(upright ? xMm : yMm);
    double distance = Math.sqrt(squareToQuarter(a, b, x, y));
    return x * x / a / a + y * y / b / b <= 1 ? distance : -distance;
  }

  /** Square of the way from a point of the first quarter, a the longer half axis. */
  private static double squareToQuarter(double a, double b, double x, double y) {
    if (y == 0 && a * x <= a * a - b * b) {
      double along = a > b ? a * x / (a * a - b * b) : 0;
      double dx = a * along - x;
      return dx * dx + b * b * (1 - along * along);
    }
    double more = (a - b) * (a + b) / b / b;
    double low = y / b;
    double across = (more + 1) * x / a;
    double high = Math.sqrt(across * across + low * low);
    for (int i = 0; i < 100 && high - low > 1e-16 * high; i++) {
      double t = (low + high) / 2;
      double u = across / (t + more);
      double v = y / b / t;
      if (u * u + v * v > 1) {
        low = t;
      } else {
        high = t;
      }
    }
    double t = (low + high) / 2;
    double dx = (more + 1) * x / (t + more) - x;
    double dy = y / t - y;
    return dx * dx + dy * dy;
  }

  @Override
  public Ellipse scaled(double factor) {
    return new Ellipse(lengthMm * factor, widthMm * factor);
  }
}

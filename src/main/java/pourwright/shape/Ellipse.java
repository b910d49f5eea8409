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

  @Override
  public Ellipse scaled(double factor) {
    return new Ellipse(lengthMm * factor, widthMm * factor);
  }
}

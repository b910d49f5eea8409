package pourwright.shape;

import org.hipparchus.special.Gamma;
import pourwright.quantity.Check;

/**
 * A superellipse, between an ellipse and a rectangle.
 *
 * @param lengthMm the whole axis along x, in mm, greater than zero
 * @param widthMm the whole axis along y, in mm, greater than zero
 * @param exponent from 0.5 to 100; 2 is the ellipse, 4 is squarish
 */
public record Superellipse(double lengthMm, double widthMm, double exponent) implements Oval {

  /** Checks axes and exponent. */
  public Superellipse {
    Check.positive("length_mm", lengthMm);
    Check.positive("width_mm", widthMm);
    Check.between("exponent", exponent, 0.5, 100);
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
  public double areaMm2() {
    double one = Math.exp(Gamma.logGamma(1 + 1 / exponent));
    double two = Math.exp(Gamma.logGamma(1 + 2 / exponent));
    return lengthMm * widthMm * one * one / two;
  }

  @Override
  public double perimeterMm() {
    return Eccentric.perimeterMm(this);
  }

  @Override
  public Superellipse scaled(double factor) {
    return new Superellipse(lengthMm * factor, widthMm * factor, exponent);
  }
}

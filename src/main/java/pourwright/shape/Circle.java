package pourwright.shape;

import pourwright.quantity.Check;

/**
 * A circle.
 *
 * @param diameterMm in mm, greater than zero
 */
public record Circle(double diameterMm) implements Oval {

  /** Checks the diameter. */
  public Circle {
    Check.positive("diameter_mm", diameterMm);
  }

  @Override
  public double halfLengthMm() {
    return diameterMm / 2;
  }

  @Override
  public double halfWidthMm() {
    return diameterMm / 2;
  }

  @Override
  public double exponent() {
    return 2;
  }

  @Override
  public double areaMm2() {
    return Math.PI / 4 * diameterMm * diameterMm;
  }

  @Override
  public double perimeterMm() {
    return Math.PI * diameterMm;
  }

  @Override
  public double radiusMm(double angle) {
    return diameterMm / 2;
  }

  @Override
  public double radiusSlopeMm(double angle) {
    return 0;
  }

  @Override
  public double clearanceMm(double xMm, double yMm) {
    return diameterMm / 2 - Math.hypot(xMm, yMm);
  }

  @Override
  public Circle scaled(double factor) {
    return new Circle(diameterMm * factor);
  }
}

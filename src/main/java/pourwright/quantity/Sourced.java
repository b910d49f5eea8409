package pourwright.quantity;

/**
 * A number that knows where it came from and how far to trust it.
 *
 * @param value in the unit that the field's name says; finite
 * @param relativeUncertainty one standard uncertainty over the value, 0 when exact; at most 2
 * @param origin where the number came from
 */
public record Sourced(double value, double relativeUncertainty, Origin origin) {

  /** Checks the range of both numbers. */
  public Sourced {
    Check.finite("value", value);
    Check.between("relative_uncertainty", relativeUncertainty, 0, 2);
  }

  /** An exact value of the given origin. */
  public static Sourced exact(double value, Origin origin) {
    return new Sourced(value, 0, origin);
  }

  /** A usual value with its relative uncertainty. */
  public static Sourced typical(double value, double relativeUncertainty) {
    return new Sourced(value, relativeUncertainty, Origin.TYPICAL);
  }

  /** A value measured in this studio. */
  public static Sourced measured(double value, double relativeUncertainty) {
    return new Sourced(value, relativeUncertainty, Origin.MEASURED_HERE);
  }

  /** The lower end of the range, one standard uncertainty below. */
  public double low() {
    return value - Math.abs(value) * relativeUncertainty;
  }

  /** The upper end of the range, one standard uncertainty above. */
  public double high() {
    return value + Math.abs(value) * relativeUncertainty;
  }

  /** True when the number has no stated uncertainty. */
  public boolean isExact() {
    return relativeUncertainty == 0;
  }
}

package pourwright.quantity;

/**
 * A length as a whole number of nanometres; a thousandth of an inch is a whole number of them.
 *
 * @param nanometres may be negative, as a difference is
 */
public record Length(long nanometres) implements Comparable<Length> {

  /** None. */
  public static final Length ZERO = new Length(0);

  /** The nearest whole amount to a finite number of millimetres. */
  public static Length ofMillimetres(double millimetres) {
    Check.between("length_mm", millimetres, -9.0e18 / 1e6, 9.0e18 / 1e6);
    return new Length(Math.round(millimetres * 1e6));
  }

  /** Millimetres, for kernels and display. */
  public double millimetres() {
    return nanometres / 1e6;
  }

  /** The sum, exact. */
  public Length plus(Length other) {
    return new Length(Math.addExact(nanometres, other.nanometres));
  }

  /** The difference, exact. */
  public Length minus(Length other) {
    return new Length(Math.subtractExact(nanometres, other.nanometres));
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(nanometres, other.nanometres);
  }
}

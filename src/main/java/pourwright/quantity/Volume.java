package pourwright.quantity;

/**
 * A volume as a whole number of nanolitres, so that a ledger's sums are exact.
 *
 * @param nanolitres may be negative, as a movement out of stock is
 */
public record Volume(long nanolitres) implements Comparable<Volume> {

  /** None. */
  public static final Volume ZERO = new Volume(0);

  /** The nearest whole amount to a finite number of millilitres. */
  public static Volume ofMillilitres(double millilitres) {
    Check.between("volume_ml", millilitres, -9.0e18 / 1e6, 9.0e18 / 1e6);
    return new Volume(Math.round(millilitres * 1e6));
  }

  /** Millilitres, for kernels and display. */
  public double millilitres() {
    return nanolitres / 1e6;
  }

  /** The sum, exact. */
  public Volume plus(Volume other) {
    return new Volume(Math.addExact(nanolitres, other.nanolitres));
  }

  /** The difference, exact. */
  public Volume minus(Volume other) {
    return new Volume(Math.subtractExact(nanolitres, other.nanolitres));
  }

  @Override
  public int compareTo(Volume other) {
    return Long.compare(nanolitres, other.nanolitres);
  }
}

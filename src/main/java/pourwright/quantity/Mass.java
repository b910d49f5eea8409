package pourwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A mass as a whole number of micrograms: fine enough that no kitchen or laboratory scale sees the
 * rounding, and whole so that a ledger's sums are exact.
 *
 * @param micrograms may be negative, as a movement out of stock is
 */
public record Mass(long micrograms) implements Comparable<Mass> {

  /** No mass. */
  public static final Mass ZERO = new Mass(0);

  /** The nearest mass to a finite number of grams. */
  public static Mass ofGrams(double grams) {
    Check.between("mass_g", grams, -9.0e12, 9.0e12);
    return new Mass(Math.round(grams * 1e6));
  }

  /** The nearest mass to a decimal number of grams, half a microgram away from zero. */
  public static Mass ofGrams(BigDecimal grams) {
    return new Mass(grams.movePointRight(6).setScale(0, RoundingMode.HALF_UP).longValueExact());
  }

  /** Grams, for kernels and display. */
  public double grams() {
    return micrograms * 1e-6;
  }

  /** Kilograms, for kernels. */
  public double kilograms() {
    return micrograms * 1e-9;
  }

  /** The sum, exact. */
  public Mass plus(Mass other) {
    return new Mass(Math.addExact(micrograms, other.micrograms));
  }

  /** The difference, exact. */
  public Mass minus(Mass other) {
    return new Mass(Math.subtractExact(micrograms, other.micrograms));
  }

  /** The same mass the other way. */
  public Mass negated() {
    return new Mass(Math.negateExact(micrograms));
  }

  /** The smaller of the two. */
  public Mass min(Mass other) {
    return micrograms <= other.micrograms ? this : other;
  }

  /** True above zero. */
  public boolean isPositive() {
    return micrograms > 0;
  }

  @Override
  public int compareTo(Mass other) {
    return Long.compare(micrograms, other.micrograms);
  }
}

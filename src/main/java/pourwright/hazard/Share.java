package pourwright.hazard;

import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * How much of a mixture is this substance, by mass.
 *
 * @param low lower end, 0 to 1
 * @param high upper end, at least {@code low}, at most 1
 */
public record Share(double low, double high) {
  /** Checks that both are fractions and in order. */
  public Share {
    Check.fraction("fraction_low", low);
    Check.fraction("fraction_high", high);
    if (low > high) {
      throw new OutOfRange(
          "fraction_low", "the lower end is above the upper end", "give the smaller number first");
    }
  }

  /** A known share. */
  public static Share of(double fraction) {
    Check.fraction("fraction", fraction);
    return new Share(fraction, fraction);
  }

  /** True when only a range is known. */
  public boolean isRange() {
    return high > low;
  }

  /** The sum of two lines of one substance; a sum above 1 is left to the mixture to refuse. */
  Share plus(Share other) {
    return new Share(Math.min(1, low + other.low), Math.min(1, high + other.high));
  }

  /** This share within a part of a larger mixture. */
  public Share times(double part) {
    return new Share(low * part, high * part);
  }
}

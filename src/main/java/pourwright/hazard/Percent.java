package pourwright.hazard;

import java.math.BigDecimal;
import java.math.MathContext;

/** Fractions as a person reads them. */
final class Percent {
  private Percent() {}

  /** {@code 0.012} as {@code 1.2 %}, at most four figures. */
  static String text(double fraction) {
    return plain(fraction * 100) + " %";
  }

  /** A number with at most four figures and no needless zeros. */
  static String plain(double value) {
    if (value == 0 || !Double.isFinite(value)) {
      return value == 0 ? "0" : "—";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(4)).stripTrailingZeros();
    return rounded.toPlainString();
  }
}

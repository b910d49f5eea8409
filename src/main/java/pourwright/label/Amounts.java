package pourwright.label;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as a person reads them. */
final class Amounts {
  private Amounts() {}

  /** At most four figures, no needless zeros. */
  static String plain(double value) {
    if (value == 0) {
      return "0";
    }
    return BigDecimal.valueOf(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }

  static String grams(double value) {
    return plain(value) + " g";
  }

  static String percent(double fraction) {
    return plain(fraction * 100) + " %";
  }
}

package pourwright.work;

import java.util.Locale;
import pourwright.stock.Amount;

/** Words for refusals and for the history. */
final class Say {
  private Say() {}

  /** An amount in its usual unit, with no more digits than it needs. */
  static String amount(Amount amount) {
    String number = String.format(Locale.ROOT, "%.3f", amount.inUsualUnit());
    String trimmed = number.replaceFirst("\\.?0+$", "");
    return (trimmed.isEmpty() || trimmed.equals("-") ? "0" : trimmed) + " " + amount.usualUnit();
  }
}

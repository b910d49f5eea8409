package pourwright.work;

import java.util.Locale;
import pourwright.quantity.Money;
import pourwright.quantity.MoneyText;
import pourwright.quantity.OutOfRange;

/** Amounts of money as they are typed, in the currency that the studio keeps its books in. */
public final class PriceText {
  private PriceText() {}

  /**
   * Whole cents, 0 or more.
   *
   * @throws OutOfRange when it is no price, is below nothing or names another currency
   */
  public static long minor(String text, Locale locale, String currency) {
    Money money = MoneyText.in(locale).read(text, currency);
    if (!money.currency().equals(currency)) {
      throw new OutOfRange(
          "price",
          "'"
              + text
              + "' is in "
              + money.currency()
              + " and the studio keeps its books in "
              + currency,
          "convert it at the rate you paid and give it in " + currency);
    }
    if (money.minor() < 0) {
      throw new OutOfRange(
          "price", "'" + text + "' is below nothing", "money that goes back is a refund");
    }
    return money.minor();
  }
}

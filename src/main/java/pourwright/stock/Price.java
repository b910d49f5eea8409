package pourwright.stock;

import pourwright.quantity.Check;

/**
 * Money paid, in whole minor units (cents) of a currency.
 *
 * @param minor minor units, zero or more
 * @param currency three letters, as ISO 4217 writes it
 */
public record Price(long minor, String currency) {

  /** Checks the range. */
  public Price {
    Check.notNegative("price_minor", minor);
    if (!currency.matches("[A-Z]{3}")) {
      throw new pourwright.quantity.OutOfRange(
          "currency", "'" + currency + "' is not a currency", "three capital letters, as EUR");
    }
  }
}

package pourwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/**
 * Money as a whole number of the currency's smallest part, so that sums are exact. Amounts in
 * unlike currencies are never added.
 *
 * @param minor whole cents, pence, öre; may be negative, as a refund is
 * @param currency ISO 4217 code, such as EUR
 */
public record Money(long minor, String currency) implements Comparable<Money> {

  /** Refuses a code that ISO 4217 does not know. */
  public Money {
    unit(currency);
  }

  private static CurrencyUnit unit(String currency) {
    try {
      return CurrencyUnit.of(currency);
    } catch (IllegalCurrencyException | NullPointerException e) {
      throw new OutOfRange(
          "currency", "'" + currency + "' is not a currency", "use its three letters, such as EUR");
    }
  }

  /** No money, in a currency. */
  public static Money zero(String currency) {
    return new Money(0, currency);
  }

  /**
   * An amount in whole and parts.
   *
   * @throws OutOfRange when it has more decimals than the currency, or is too large
   */
  public static Money of(BigDecimal amount, String currency) {
    try {
      return of(org.joda.money.Money.of(unit(currency), amount));
    } catch (ArithmeticException e) {
      throw new OutOfRange(
          "amount",
          amount.toPlainString() + " " + currency + " cannot be paid",
          "a price in " + currency + " has " + unit(currency).getDecimalPlaces() + " decimals");
    }
  }

  private static Money of(org.joda.money.Money money) {
    return new Money(money.getAmountMinorLong(), money.getCurrencyUnit().getCode());
  }

  /** The amount in whole and parts. */
  public BigDecimal amount() {
    return joda().getAmount();
  }

  /** The amount as a double, for calculators. */
  public double approximate() {
    return amount().doubleValue();
  }

  /** The sum, exact. */
  public Money plus(Money other) {
    return of(joda().plus(inSame(other)));
  }

  /** The difference, exact. */
  public Money minus(Money other) {
    return of(joda().minus(inSame(other)));
  }

  /** A multiple, rounded half to even to the smallest part. */
  public Money times(BigDecimal factor) {
    return of(joda().multipliedBy(factor, RoundingMode.HALF_EVEN));
  }

  private org.joda.money.Money joda() {
    return org.joda.money.Money.ofMinor(unit(currency), minor);
  }

  private org.joda.money.Money inSame(Money other) {
    if (!other.currency.equals(currency)) {
      throw new OutOfRange(
          "currency",
          "an amount in " + other.currency + " cannot be added to one in " + currency,
          "keep unlike currencies apart, or enter the rate of the day");
    }
    return other.joda();
  }

  @Override
  public int compareTo(Money other) {
    return joda().compareTo(inSame(other));
  }
}

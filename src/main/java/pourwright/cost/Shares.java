package pourwright.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/** Money shared out by weights so that the shares add up to the cent. */
public final class Shares {
  private Shares() {}

  /**
   * Shares: after each one, what was handed out so far is the nearest cent to its part of the
   * whole, so no share is off by more than a cent and all of them together are exact.
   *
   * @param minor what is shared, whole cents
   * @param weights each 0 or more, not all 0; equal parts where all are equal
   */
  public static List<Long> of(long minor, List<Double> weights) {
    BigDecimal all = BigDecimal.ZERO;
    for (double weight : weights) {
      all = all.add(BigDecimal.valueOf(Check.notNegative("weight", weight)));
    }
    if (all.signum() == 0) {
      throw new OutOfRange("weight", "nothing takes a share", "give at least one weight above 0");
    }
    List<Long> shares = new ArrayList<>();
    BigDecimal sum = BigDecimal.ZERO;
    long given = 0;
    for (double weight : weights) {
      sum = sum.add(BigDecimal.valueOf(weight));
      long upTo =
          sum.multiply(BigDecimal.valueOf(minor))
              .divide(all, 0, RoundingMode.HALF_UP)
              .longValueExact();
      shares.add(upTo - given);
      given = upTo;
    }
    return shares;
  }
}

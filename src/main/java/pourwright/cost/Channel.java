package pourwright.cost;

import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * One way to sell: what it takes of the price and what it costs by the piece. Maths:
 * docs/models/cost.md 2.
 *
 * @param feeFraction share of the price that the channel keeps, from 0 to below 1
 * @param feeFixed what it takes for each piece beside that
 * @param postage postage that the studio pays for a piece
 */
public record Channel(double feeFraction, double feeFixed, double postage) {

  /** Checks the ranges. */
  public Channel {
    Check.notNegative("fee_fraction", feeFraction);
    Check.notNegative("fee_fixed", feeFixed);
    Check.notNegative("postage", postage);
    if (feeFraction >= 1) {
      throw new OutOfRange(
          "fee_fraction",
          "a fee of " + feeFraction + " of the price leaves nothing",
          "6.5 % is written 0.065");
    }
  }

  /**
   * The price at which a share of the price is left.
   *
   * @param marginOfPrice from 0; with the fee below 1
   */
  public double priceForMarginOfPrice(double cost, double marginOfPrice) {
    Check.notNegative("margin_of_price_fraction", marginOfPrice);
    if (feeFraction + marginOfPrice >= 1) {
      throw new OutOfRange(
          "margin_of_price_fraction",
          "fee and margin together take the whole price",
          "their shares of the price must add to less than 1; or give margin_of_cost_fraction");
    }
    return (cost + postage + feeFixed) / (1 - feeFraction - marginOfPrice);
  }

  /** The price at which a share of the cost is left on top of it. */
  public double priceForMarginOfCost(double cost, double marginOfCost) {
    Check.notNegative("margin_of_cost_fraction", marginOfCost);
    return (cost * (1 + marginOfCost) + postage + feeFixed) / (1 - feeFraction);
  }

  /** What is left of a price when fee, postage and cost are paid; negative at a loss. */
  public double margin(double cost, double price) {
    return price * (1 - feeFraction) - feeFixed - postage - cost;
  }

  /**
   * How many pieces must be sold at a margin until fixed costs are paid; null when none is enough.
   *
   * @param fixedCosts 0 or more
   */
  public static @Nullable Long breakEvenUnits(double fixedCosts, double margin) {
    Check.notNegative("fixed_costs", fixedCosts);
    if (fixedCosts == 0) {
      return 0L;
    }
    if (margin <= 0) {
      return null;
    }
    double units = fixedCosts / margin;
    return units > 1e15 ? null : (Long) (long) Math.ceil(units - 1e-9 * Math.max(1, units));
  }
}

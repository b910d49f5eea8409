package pourwright.cost;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * How many to take to a market when what is left over is worth less and what is short is a sale
 * lost: the newsvendor. Order up to the demand that is exceeded with a chance of {@code
 * overage/(underage + overage)}.
 *
 * <p>Source: Arrow, Harris and Marschak, Econometrica 19 (1951) 250-272; any textbook of
 * operations.
 *
 * @param price what a piece sells for at the stall
 * @param cost what it costs
 * @param leftWorth what it is worth when it comes home again
 */
public record StallStock(double price, double cost, double leftWorth) {
  /** Checks that a sale earns and that a left-over costs. */
  public StallStock {
    Check.notNegative("price", price);
    Check.notNegative("cost", cost);
    Check.notNegative("left_worth", leftWorth);
    if (price <= cost) {
      throw new OutOfRange("price", "a sale earns nothing", "take none, or ask more");
    }
    if (leftWorth >= cost) {
      throw new OutOfRange(
          "left_worth",
          "what comes home has lost nothing, so any number may be taken",
          "count what the trip and the handling cost");
    }
  }

  /** The chance with which demand is to be met. */
  public double ratio() {
    return (price - cost) / (price - leftWorth);
  }

  /** Number for a demand that is evenly spread between two numbers. */
  public double forEvenDemand(double low, double high) {
    return low + ratio() * (Check.between("high", high, low, 1e9) - low);
  }

  /** Number for a demand that scatters normally. */
  public double forNormalDemand(double mean, double deviation) {
    return new NormalDistribution(mean, Check.positive("deviation", deviation))
        .inverseCumulativeProbability(ratio());
  }

  /** Number from what was sold, or could have been, on earlier days. */
  public double forPastDays(List<Double> demands) {
    if (demands.isEmpty()) {
      throw new OutOfRange("demands", "no day is given", "note what each market day sold");
    }
    List<Double> rising = demands.stream().sorted().toList();
    int at = (int) Math.ceil(ratio() * rising.size() - 1e-9);
    return rising.get(Math.max(1, at) - 1);
  }
}

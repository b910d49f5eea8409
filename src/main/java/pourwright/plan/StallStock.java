package pourwright.plan;

import org.hipparchus.distribution.continuous.NormalDistribution;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * How many to take to a stall when what stays unsold costs: the newsvendor's rule. The best number
 * is the smallest for which the chance to sell out is at most the cost of one too many over the
 * cost of one too many and one too few.
 *
 * <p>Source: K. J. Arrow, T. Harris, J. Marschak, "Optimal Inventory Policy", Econometrica 19,
 * 1951; E. A. Silver, D. F. Pyke, R. Peterson, "Inventory Management and Production Planning and
 * Scheduling", 3rd edition, 1998, chapter 10. Demand is taken as normal and not below 0.
 *
 * @param pieces how many to take
 * @param chanceAllSold chance that all of them are sold
 * @param expectedUnsold pieces that come home on average
 * @param expectedMargin margin earned on average, less what unsold pieces cost
 */
public record StallStock(
    int pieces, double chanceAllSold, double expectedUnsold, double expectedMargin) {
  /**
   * The best number.
   *
   * @param mean pieces asked for on average, 0 or more
   * @param deviation standard deviation of that, above 0
   * @param margin what a sold piece earns, above 0
   * @param loss what a piece that stays unsold costs, 0 or more; 0 when it keeps its worth
   * @throws OutOfRange when unsold pieces cost nothing, for then there is no best number
   */
  public static StallStock of(double mean, double deviation, double margin, double loss) {
    Check.notNegative("mean", mean);
    Check.positive("deviation", deviation);
    Check.positive("margin", margin);
    Check.notNegative("loss", loss);
    if (loss == 0) {
      throw new OutOfRange(
          "loss",
          "a piece that stays unsold costs nothing here",
          "take as many as you can carry, or say what storing and carrying home costs");
    }
    NormalDistribution demand = new NormalDistribution(mean, deviation);
    double enough = margin / (margin + loss);
    int pieces = (int) Math.max(0, Math.ceil(demand.inverseCumulativeProbability(enough) - 1e-9));
    double unsold = unsold(demand, pieces);
    double sold = pieces - unsold;
    return new StallStock(
        pieces, 1 - demand.cumulativeProbability(pieces), unsold, sold * margin - unsold * loss);
  }

  /** E[max(0, pieces − demand)], demand cut at 0: closed form of the normal loss function. */
  private static double unsold(NormalDistribution demand, int pieces) {
    return partial(demand, pieces) - partial(demand, 0);
  }

  /** E[max(0, x − demand)] for a demand that may be below 0. */
  private static double partial(NormalDistribution demand, double x) {
    double z = (x - demand.getMean()) / demand.getStandardDeviation();
    NormalDistribution unit = new NormalDistribution();
    return demand.getStandardDeviation() * (z * unit.cumulativeProbability(z) + unit.density(z));
  }
}

package pourwright.stock;

import java.time.LocalDate;
import org.hipparchus.distribution.continuous.NormalDistribution;
import pourwright.quantity.Check;

/**
 * When to order a material and how much must be there for surprises.
 *
 * <p>Source: E. A. Silver, D. F. Pyke, R. Peterson, "Inventory Management and Production Planning
 * and Scheduling", 3rd edition, 1998, chapter 7: deviation of the use in a lead time √(L·σ_use² +
 * use²·σ_L²), safety stock k times it, order point use·L plus safety stock. Use and lead time are
 * taken as independent and normal.
 *
 * @param safetyG safety stock, g
 * @param orderPointG order when stock and what is on order fall to this, g
 */
public record Reorder(double safetyG, double orderPointG) {
  /**
   * Use and lead time as they were.
   *
   * @param perDayG mean use a day, g
   * @param deviationPerDayG its standard deviation from day to day, g
   * @param leadDays mean days from order to shelf
   * @param deviationLeadDays their standard deviation
   */
  public record Use(
      double perDayG, double deviationPerDayG, double leadDays, double deviationLeadDays) {
    /** Checks the ranges. */
    public Use {
      Check.notNegative("per_day_g", perDayG);
      Check.notNegative("deviation_per_day_g", deviationPerDayG);
      Check.notNegative("lead_days", leadDays);
      Check.notNegative("deviation_lead_days", deviationLeadDays);
    }
  }

  /** With a chance not to run out in a lead time, above 0.5 and below 1; house: 0.95. */
  public static Reorder of(Use use, double chance) {
    Check.between("chance", chance, 0.5, 0.9999);
    double k = new NormalDistribution().inverseCumulativeProbability(chance);
    double deviation =
        Math.sqrt(
            use.leadDays() * use.deviationPerDayG() * use.deviationPerDayG()
                + Math.pow(use.perDayG() * use.deviationLeadDays(), 2));
    double safety = Math.max(0, k * deviation);
    return new Reorder(safety, use.perDayG() * use.leadDays() + safety);
  }

  /**
   * The last day to order so that the safety stock is not touched; today when it is touched
   * already.
   */
  public LocalDate orderBy(LocalDate today, double onHandAndOnOrderG, Use use) {
    if (use.perDayG() == 0 || onHandAndOnOrderG <= orderPointG) {
      return today;
    }
    return today.plusDays((long) ((onHandAndOnOrderG - orderPointG) / use.perDayG()));
  }

  /** The most that is used up before it expires, g: more is thrown away. */
  public static double mostThatKeeps(Use use, int shelfLifeDays, double onHandG) {
    return Math.max(0, use.perDayG() * shelfLifeDays - onHandG);
  }
}

package pourwright.cost;

import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * What one good piece costs, in whatever currency all amounts are in. Pieces that fail are carried
 * by the good ones: the whole is divided by the share that comes out good.
 *
 * <p>{@code cost = (materials + packaging + minutes/60·(wage + overhead))/(1 − reject)}. Maths:
 * docs/models/cost.md 1.
 *
 * @param materials materials of one piece
 * @param packaging what it is packed in
 * @param minutes hands on one piece, in minutes
 * @param wagePerHour what an hour of hands is paid
 * @param overheadPerHour rent, power and tools by the hour of hands
 * @param rejectFraction share of pieces that fail, from 0 to below 1
 */
public record PieceCost(
    double materials,
    double packaging,
    double minutes,
    double wagePerHour,
    double overheadPerHour,
    double rejectFraction) {

  /** Checks the ranges. */
  public PieceCost {
    Check.notNegative("materials", materials);
    Check.notNegative("packaging", packaging);
    Check.notNegative("minutes", minutes);
    Check.notNegative("hourly_wage", wagePerHour);
    Check.notNegative("overhead_per_hour", overheadPerHour);
    Check.fraction("reject_fraction", rejectFraction);
    if (rejectFraction >= 1) {
      throw new OutOfRange(
          "reject_fraction",
          "when every piece fails no good one carries the cost",
          "give a share below 1: 5 % is written 0.05");
    }
  }

  /** Wage of one piece made, good or bad. */
  public double wage() {
    return minutes / 60 * wagePerHour;
  }

  /** Overhead of one piece made, good or bad. */
  public double overhead() {
    return minutes / 60 * overheadPerHour;
  }

  /** What the failed pieces add to a good one. */
  public double failures() {
    return made() * rejectFraction / (1 - rejectFraction);
  }

  private double made() {
    return materials + packaging + wage() + overhead();
  }

  /** Cost of one good piece. */
  public double cost() {
    return made() / (1 - rejectFraction);
  }
}

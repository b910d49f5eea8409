package pourwright.cost;

import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * What a parcel is charged as: the larger of what it weighs and what its size weighs. Divisors are
 * common practice and change; they are settings.
 *
 * <p>Common practice: 139 in³/lb (main private carriers), 166 (postal, above 1728 in³), 5000
 * cm³/kg.
 */
public final class Parcel {
  private Parcel() {}

  /** One line of a carrier's table: up to so much, for so much money. */
  public record Rate(double upTo, double money) {}

  /**
   * Whole pounds charged; each side counts in whole inches, a part of one as a whole.
   *
   * @param divisor cubic inches to the pound
   * @param aboveIn3 size below which only the weight counts; 0 for always
   */
  public static int pounds(double[] sidesIn, double weightLb, double divisor, double aboveIn3) {
    double in3 = 1;
    for (double side : sides(sidesIn)) {
      in3 *= Math.ceil(side - 1e-9);
    }
    double bySize = in3 > aboveIn3 ? in3 / Check.positive("divisor", divisor) : 0;
    return (int) Math.ceil(Math.max(Check.positive("weight_lb", weightLb), bySize) - 1e-9);
  }

  /** Kilograms charged, not rounded. */
  public static double kilograms(double[] sidesCm, double weightKg, double divisor) {
    double cm3 = 1;
    for (double side : sides(sidesCm)) {
      cm3 *= side;
    }
    return Math.max(
        Check.positive("weight_kg", weightKg), cm3 / Check.positive("divisor", divisor));
  }

  private static double[] sides(double[] sides) {
    if (sides.length != 3) {
      throw new OutOfRange("sides", "a parcel has three sides", "give length, width, height");
    }
    for (double side : sides) {
      Check.positive("sides", side);
    }
    return sides;
  }

  /** The rate of a table in rising order. */
  public static double postage(double charged, List<Rate> table) {
    return table.stream()
        .filter(r -> charged <= r.upTo() + 1e-9)
        .findFirst()
        .map(Rate::money)
        .orElseThrow(
            () ->
                new OutOfRange(
                    "weight", "the table ends below " + charged, "add a line to the table"));
  }
}

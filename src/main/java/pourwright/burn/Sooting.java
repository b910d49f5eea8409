package pourwright.burn;

import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;

/**
 * The mean soot index of candles burnt in the standard's wind-guard against the limit of EN
 * 15426:2018: at most 1.0 an hour over three candles of one wick and at most 100 mm across. The
 * scope was read in the standard's published summary; the limit is from memory and agrees with the
 * texts of test houses.
 */
public final class Sooting {
  /** How many candles the method burns. */
  public static final int CANDLES = 3;

  private static final double LIMIT_PER_HOUR = 1.0;
  private static final double WIDEST_MM = 100;

  private Sooting() {}

  /** What the method says. */
  public enum Outcome {
    /** The mean is at or under the limit. */
    PASS,
    /** The mean is over the limit. */
    FAIL,
    /** The method does not judge such a candle: several wicks, or too wide. */
    NOT_APPLICABLE
  }

  /**
   * The outcome for one candle design.
   *
   * @param indicesPerHour soot index of each candle, 0 or more, per hour; three of them
   * @param wicks how many wicks the candle has, 1 or more
   * @param acrossMm its diameter, or that of a circle of equal area, in mm
   * @throws OutOfRange when there are not three indices
   */
  public static Outcome judge(List<Double> indicesPerHour, int wicks, double acrossMm) {
    Check.between("wicks", wicks, 1, 100);
    Check.positive("across_mm", acrossMm);
    if (wicks > 1 || acrossMm > WIDEST_MM) {
      return Outcome.NOT_APPLICABLE;
    }
    if (indicesPerHour.size() != CANDLES) {
      throw new OutOfRange(
          "soot_index",
          Counted.of(indicesPerHour.size(), "soot index was given", "soot indices were given"),
          "the method takes the mean of three candles");
    }
    double mean =
        indicesPerHour.stream()
            .mapToDouble(i -> Check.notNegative("soot_index", i))
            .average()
            .orElseThrow();
    // three readings of one decimal: a mean of 1.0 is at the limit, not a hair over it
    return mean > LIMIT_PER_HOUR * (1 + 1e-9) ? Outcome.FAIL : Outcome.PASS;
  }
}

package pourwright.wick;

import pourwright.quantity.Check;

/**
 * Heat for the wax it stands in: grams burnt an hour over the surface, beside the same of a vessel
 * that was proved. House: flagged above 1.5 times.
 *
 * @param gramsPerHourPerCm2 of the layout looked at
 * @param timesProved over the proved vessel's; NaN where none is proved
 */
public record HeatCheck(double gramsPerHourPerCm2, double timesProved) {
  /** Above so many times the proved vessel's the layout is flagged. House. */
  public static final double FLAG_TIMES = 1.5;

  /**
   * Checks a layout.
   *
   * @param burnRateGPerH of one wick
   * @param provedGPerHPerCm2 of a proved vessel, NaN where there is none
   */
  public static HeatCheck of(
      int wicks, double burnRateGPerH, double surfaceMm2, double provedGPerHPerCm2) {
    double rate =
        wicks
            * Check.positive("burn_rate_g_per_h", burnRateGPerH)
            / (Check.positive("surface_mm2", surfaceMm2) / 100);
    return new HeatCheck(rate, rate / provedGPerHPerCm2);
  }

  /** True when it is hotter than 1.5 times a proved vessel. */
  public boolean isFlagged() {
    return timesProved > FLAG_TIMES;
  }
}

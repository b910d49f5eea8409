package pourwright.burn;

import pourwright.quantity.Check;

/**
 * A lit wick and how fast it is known to burn.
 *
 * @param xMm from the centre of the cavity, along its length
 * @param yMm across
 * @param gramsPerHour measured by weighing, 0 (not lit) to 50
 */
public record BurningWick(double xMm, double yMm, double gramsPerHour) {

  /** Checks the ranges. */
  public BurningWick {
    Check.finite("x_mm", xMm);
    Check.finite("y_mm", yMm);
    Check.between("burn_rate_g_per_h", gramsPerHour, 0, 50);
  }
}

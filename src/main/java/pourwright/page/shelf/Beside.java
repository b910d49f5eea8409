package pourwright.page.shelf;

import pourwright.burn.Burn;
import pourwright.burn.BurnResult;
import pourwright.burn.Simulation;

/**
 * A tested candle that a simulation is held against. Without a calibration no temperature of wall
 * or base is told, only whether both simulations differ by more than they are good for.
 *
 * @param name the tested candle's
 * @param burn the same hours of it, at the burn rate that its tests weighed
 */
record Beside(String name, Burn burn) {
  /** House: two simulations that differ by less are called alike. */
  private static final double ALIKE_K = 1;

  /** Wall and underside of a result beside those of the tested candle, in words. */
  String told(BurnResult result) {
    BurnResult tested = Simulation.run(burn);
    return "wall "
        + than(result.wallMaxC() - tested.wallMaxC())
        + ", underside "
        + than(result.baseMaxC() - tested.baseMaxC());
  }

  private static String than(double kelvin) {
    return Math.abs(kelvin) < ALIKE_K ? "alike" : kelvin > 0 ? "warmer" : "cooler";
  }
}

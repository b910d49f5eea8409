package pourwright.cast;

import pourwright.quantity.Check;

/**
 * Temperature of a fresh mix from those of its parts. Source: US Army TM 5-852-4, chapter 4,
 * equation 16, with a specific heat of the solids of 0.22 of water's.
 */
public final class MixHeat {
  private static final double SOLIDS = 0.22;

  private MixHeat() {}

  /** Mix temperature in °C of dry parts and water. */
  public static double mixC(double dryG, double dryC, double waterG, double waterC) {
    double heat = SOLIDS * Check.positive("powder_g", dryG) + Check.positive("water_g", waterG);
    return (SOLIDS * dryG * dryC + waterG * waterC) / heat;
  }

  /** Water temperature in °C that gives a wanted mix temperature; may be out of reach. */
  public static double waterCFor(double wantedC, double dryG, double dryC, double waterG) {
    return wantedC + SOLIDS * dryG * (wantedC - dryC) / Check.positive("water_g", waterG);
  }
}

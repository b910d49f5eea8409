package pourwright.cast;

import pourwright.quantity.Check;

/**
 * A liquid colour: paint, latex, dispersion. Its water counts as mix water, its solids as a
 * polymer.
 *
 * @param massG for the batch before waste, in g, zero or more
 * @param solidsFraction share of the liquid that is not water, 0 to 1
 * @param gPerMl density of the whole liquid, in g/ml, greater than zero
 */
public record LiquidColour(double massG, double solidsFraction, double gPerMl) {

  /** Checks all ranges. */
  public LiquidColour {
    Check.notNegative("mass_g", massG);
    Check.fraction("solids_fraction", solidsFraction);
    Check.positive("density_g_per_ml", gPerMl);
  }

  /** Water in it, in g. */
  public double waterG() {
    return massG * (1 - solidsFraction);
  }

  /** What is not water, in g. */
  public double solidsG() {
    return massG * solidsFraction;
  }

  /** Its volume, in ml. */
  public double volumeMl() {
    return massG / gPerMl;
  }

  /**
   * The liquid that gives a share of polymer to the cement. Source: mass balance; dosing by polymer
   * solids as in ACI 548.3R.
   */
  public static LiquidColour forPolymer(
      double cementG, double polymerToCement, double solidsFraction, double gPerMl) {
    Check.positive("solids_fraction", solidsFraction);
    return new LiquidColour(cementG * polymerToCement / solidsFraction, solidsFraction, gPerMl);
  }
}

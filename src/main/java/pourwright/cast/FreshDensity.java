package pourwright.cast;

import pourwright.quantity.Check;

/** What a weighed cup of fresh mix tells. Source: ASTM C138, gravimetric air. */
public final class FreshDensity {
  private FreshDensity() {}

  /**
   * Share of air.
   *
   * @param measuredGPerMl mass of a fresh millilitre as weighed, in g/ml
   * @param airFreeGPerMl what it would weigh without air, in g/ml
   */
  public static double airFraction(double measuredGPerMl, double airFreeGPerMl) {
    Check.positive("measured_g_per_ml", measuredGPerMl);
    return (Check.positive("air_free_g_per_ml", airFreeGPerMl) - measuredGPerMl) / airFreeGPerMl;
  }
}

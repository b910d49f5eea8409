package pourwright.shape;

import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;

/**
 * Water as a measure of volume.
 *
 * <p>Source of the density: Tanaka et al., Metrologia 38 (2001) 301, air-free water at one
 * atmosphere; tap water with dissolved air is 0.002 kg/m³ lighter, which is neglected. Source of
 * the buoyancy factor: ISO 8655-6, with air of 1.2 kg/m³ and weights of 8000 kg/m³. Range 0 to 40
 * °C.
 */
public final class Water {
  /** Share of a filled volume that edge and meniscus leave open, one standard uncertainty. */
  public static final double MENISCUS = 0.005;

  private static final double AIR_KG_PER_M3 = 1.2;
  private static final double WEIGHTS_KG_PER_M3 = 8000;

  private Water() {}

  /**
   * Density of water, in g/ml.
   *
   * @param celsius from 0 to 40
   */
  public static double gramsPerMl(double celsius) {
    Check.between("water_c", celsius, 0, 40);
    double t = celsius;
    double cold = t - 3.983035;
    return 0.999974950 * (1 - cold * cold * (t + 301.797) / (522528.9 * (t + 69.34881)));
  }

  /** Millilitres in a gram as a scale shows it in air. */
  public static double mlPerGram(double celsius) {
    double water = gramsPerMl(celsius) * 1000;
    return 1000 * (1 - AIR_KG_PER_M3 / WEIGHTS_KG_PER_M3) / (water - AIR_KG_PER_M3);
  }

  /**
   * The volume that a vessel or a mold holds, weighed empty and full of water.
   *
   * @param emptyG the vessel alone, in g
   * @param fullG the vessel full of water, in g, more than empty
   * @param celsius temperature of the water, 0 to 40 °C
   * @param resolutionG smallest step of the scale, in g, greater than zero
   * @return in ml, with the meniscus and the rounding of both weighings as its uncertainty
   */
  public static Sourced volumeMl(double emptyG, double fullG, double celsius, double resolutionG) {
    Check.notNegative("empty_g", emptyG);
    Check.positive("scale_resolution_g", resolutionG);
    if (!(fullG > emptyG)) {
      throw new OutOfRange(
          "full_g",
          "the full weight is not above the empty one",
          "exchange the two, or weigh again");
    }
    double water = fullG - emptyG;
    double rounding = resolutionG / Math.sqrt(12) * Math.sqrt(2) / water;
    double relative = Math.min(2, Math.hypot(MENISCUS, rounding));
    return Sourced.measured(water * mlPerGram(celsius), relative);
  }
}

package pourwright.burn;

import pourwright.quantity.Check;

/**
 * What a flame does with its heat. Ranges and where they come from: docs/models/burn.md.
 *
 * @param heatOfCombustion J/kg; paraffin 43.8e6, hardened plant wax 37.3e6
 * @param radiative share of the heat release that is radiated, typically 0.10 to 0.30
 * @param absorbed share of arriving radiation that is taken up
 * @param pointMm height of the radiating point above the wax
 * @param rootW heat given to wax round the wick, W, typically 2 to 6
 * @param rootDepthMm depth below the surface to which that heat goes
 */
public record Flame(
    double heatOfCombustion,
    double radiative,
    double absorbed,
    double pointMm,
    double rootW,
    double rootDepthMm) {
  /** Radius of the cylinder of wax that takes the wick root's heat. */
  static final double ROOT_RADIUS_MM = 3;

  /** Checks the ranges. */
  public Flame {
    Check.between("heat_of_combustion_j_per_kg", heatOfCombustion, 1e6, 100e6);
    Check.fraction("radiative_fraction", radiative);
    Check.fraction("radiation_absorbed_fraction", absorbed);
    Check.between("flame_point_above_wax_mm", pointMm, 1, 200);
    Check.between("wick_root_w", rootW, 0, 100);
    Check.between("wick_root_depth_mm", rootDepthMm, 0.1, 100);
  }

  /** Heat release of a wick, W. */
  public double releaseW(BurningWick wick) {
    return releaseW(wick.gramsPerHour(), heatOfCombustion);
  }

  /** Heat release in W of a burn rate in g/h and a net heat of combustion in J/kg. */
  public static double releaseW(double gramsPerHour, double heatOfCombustion) {
    return gramsPerHour / 3.6e6 * heatOfCombustion;
  }
}

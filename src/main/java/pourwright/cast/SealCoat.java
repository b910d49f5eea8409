package pourwright.cast;

import pourwright.quantity.Check;

/** How much sealer a vessel takes. Coverage is the sheet's; porous castings take more. */
public final class SealCoat {
  /** Square metres a litre covers for a square foot a US gallon covers. NIST SP 811, exact. */
  public static final double M2_PER_L_OF_FT2_PER_GAL = 0.09290304 / 3.785411784;

  private SealCoat() {}

  /** A coverage that a sheet gives in square feet to a US gallon, in m² to a litre. */
  public static double m2PerL(double ft2PerGal) {
    return Check.positive("coverage_ft2_per_gal", ft2PerGal) * M2_PER_L_OF_FT2_PER_GAL;
  }

  /**
   * Sealer for all coats, in ml.
   *
   * @param areaMm2 face to be coated, in mm²
   * @param coats zero or more
   * @param coverageM2PerL what a litre covers in one coat, by the sheet
   */
  public static double millilitres(double areaMm2, int coats, double coverageM2PerL) {
    Check.notNegative("area_mm2", areaMm2);
    Check.between("coats", coats, 0, 20);
    return coats * areaMm2 * 1e-6 / Check.positive("coverage_m2_per_l", coverageM2PerL) * 1000;
  }
}

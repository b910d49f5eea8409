package pourwright.cast;

import pourwright.quantity.Check;

/** Why a bubble stays where it is. Physics for explanations, not for amounts. */
public final class Bubbles {
  private static final double GRAVITY = 9.80665;

  private Bubbles() {}

  /** Rise of a bubble with a stiff skin, in mm/s. Source: Stokes (1851), {@code 2Δρ·g·r²/9η}. */
  public static double riseMmPerS(double radiusMm, double viscosityPaS, double kgPerM3) {
    double r = radiusMm / 1000;
    return 2
        * kgPerM3
        * GRAVITY
        * r
        * r
        / (9 * Check.positive("viscosity_pa_s", viscosityPaS))
        * 1000;
  }

  /** Radius below which a mix at rest holds a bubble for good, in mm; coefficient from memory. */
  public static double heldBelowMm(double yieldPa, double kgPerM3) {
    return yieldPa / (0.143 * Check.positive("density_kg_per_m3", kgPerM3) * GRAVITY) * 1000;
  }
}

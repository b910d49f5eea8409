package pourwright.cast;

import pourwright.quantity.Check;

/**
 * How much slower things go in a shed that is not at 20 °C. Setting and hardening by the equivalent
 * age of ASTM C1074 with 40 kJ/mol (portland; other binders differ). Drying by the pressure of
 * water vapour at saturation, since at a like relative humidity the air takes up water in
 * proportion to it; Tetens' formula (O. Tetens, Zeitschrift fuer Geophysik 6 (1930) 297-309). A
 * first order: wind and humidity count as much, and only a scale says that a vessel is dry.
 *
 * @param harden times longer for setting and hardening
 * @param dry times longer for drying
 */
public record ColdShed(double harden, double dry) {
  private static final double REFERENCE_C = 20;
  private static final double ENERGY = 40;

  /** Below this, mixes stop hardening and freeze: nothing is planned by it. */
  private static final double LOWEST_C = 2;

  private static final double HIGHEST_C = 35;

  /** At a temperature from 2 to 35 °C. */
  public static ColdShed at(double celsius) {
    Check.between("shed_c", celsius, LOWEST_C, HIGHEST_C);
    return new ColdShed(
        Maturity.timeAt(1, REFERENCE_C, celsius, ENERGY),
        saturationKpa(REFERENCE_C) / saturationKpa(celsius));
  }

  /** Pressure of water vapour at saturation over water, kPa. */
  static double saturationKpa(double celsius) {
    return 0.61078 * Math.exp(17.269 * celsius / (celsius + 237.3));
  }
}

package pourwright.cast;

import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * Drying of a hardened casting. Hardening wants water, drying takes it away; they are never one
 * wait. How long a small casting takes is not published: the scale decides, see {@link #isDry}.
 */
public final class Drying {
  /**
   * Loss of mass in 24 h below which a casting counts as dry. House, after ASTM C642's weighing.
   */
  public static final double DRY_LOSS_PER_DAY = 0.001;

  private Drying() {}

  /**
   * Water that can leave a portland casting, in g: the mix water less 0.23 g for each gram of
   * reacted cement. Source: Powers and Brownyard as in Neville.
   */
  public static double evaporableG(double waterG, double cementG, double hydrated) {
    return waterG - 0.23 * Check.fraction("hydrated_fraction", hydrated) * cementG;
  }

  /**
   * Days until nine tenths of the moisture have left a wall that dries to both faces, {@code
   * 0.848·L²/D} with half the thickness L. Source: Fick's second law, series of the slab. The
   * diffusivity is the weak point: 1e-11 to 1e-10 m²/s, from memory.
   */
  public static double daysTo90Percent(double wallMm, double diffusivityM2PerS) {
    double half = Check.positive("wall_mm", wallMm) / 2000;
    return 0.848 * half * half / Check.positive("diffusivity_m2_per_s", diffusivityM2PerS) / 86400;
  }

  /** Loss of mass between two weighings told for 24 h, as a share of the later mass. */
  public static double lossPerDay(double beforeG, double laterG, double hours) {
    Check.positive("later_g", laterG);
    return (beforeG - laterG) / laterG * 24 / Check.positive("hours", hours);
  }

  /**
   * True when the mass is constant: less than 0.1 % lost in 24 h, told by two weighings at least 12
   * h apart. A gain is constant too only within the same limit.
   *
   * @throws OutOfRange when the weighings are less than 12 h apart, which no scale can judge
   */
  public static boolean isDry(double beforeG, double laterG, double hours) {
    if (hours < 12) {
      throw new OutOfRange(
          "hours",
          "the two weighings are only " + hours + " h apart",
          "weigh again at least 12 h, better a day, after the first");
    }
    return Math.abs(lossPerDay(beforeG, laterG, hours)) < DRY_LOSS_PER_DAY;
  }

  /**
   * Water that leaves a fresh face, in kg/(m²·h): above 0.5 the face wants a cover, at 1 it cracks.
   * Source: Uno, ACI Materials Journal 95-M34 (1998), formula as restated.
   */
  public static double freshFaceKgPerM2H(
      double mixC, double airC, double humidity, double windKmPerH) {
    Check.fraction("relative_humidity_fraction", humidity);
    return 5
        * (Math.pow(mixC + 18, 2.5) - humidity * Math.pow(airC + 18, 2.5))
        * (windKmPerH + 4)
        * 1e-6;
  }

  /**
   * The same by the older formula that the chart was drawn of, in lb/(ft²·h), all in US units: it
   * reads a little higher. Source: Menzel (1954) in ACI 305, formula from memory.
   */
  public static double freshFaceLbPerFt2H(
      double mixF, double airF, double humidity, double windMph) {
    Check.fraction("relative_humidity_fraction", humidity);
    return (Math.pow(mixF, 2.5) - humidity * Math.pow(airF, 2.5)) * (1 + 0.4 * windMph) * 1e-6;
  }

  /** A rate in lb/(ft²·h) of one in kg/(m²·h). Source: NIST SP 811. */
  public static double lbPerFt2H(double kgPerM2H) {
    return kgPerM2H * 0.09290304 / 0.45359237;
  }
}

package pourwright.hazard;

import java.util.List;
import pourwright.quantity.Check;

/** Limits at the bench: silica dust, chromium in cement, lead in wick cores. */
public final class Workplace {
  private static final double ACTION_UG_M3 = 25;
  private static final double LIMIT_UG_M3 = 50;
  private static final double SHIFT_H = 8;
  private static final double CHROMIUM_PPM = 2;
  private static final double LEAD_FRACTION = 0.0006;

  private Workplace() {}

  /** Where an exposure to silica dust stands (29 CFR 1910.1053; 50 µg/m³ from memory). */
  public enum Silica {
    /** Below the action level. */
    BELOW_ACTION_LEVEL,
    /** At or above the action level, at most the limit. */
    ACTION_LEVEL,
    /** Above the permissible limit. */
    ABOVE_LIMIT
  }

  /**
   * A stretch of the day.
   *
   * @param microgramsPerM3 silica in the air, 0 or more
   * @param hours 0 to 24
   */
  public record Stretch(double microgramsPerM3, double hours) {
    /** Checks both numbers. */
    public Stretch {
      Check.notNegative("silica_ug_per_m3", microgramsPerM3);
      Check.between("hours", hours, 0, 24);
    }
  }

  /** Average over eight hours, µg/m³: Σ C·t / 8. */
  public static double eightHourAverage(List<Stretch> day) {
    return day.stream().mapToDouble(s -> s.microgramsPerM3() * s.hours()).sum() / SHIFT_H;
  }

  /** Where that average stands. */
  public static Silica silica(List<Stretch> day) {
    double average = eightHourAverage(day);
    if (average > LIMIT_UG_M3 * (1 + Limits.HAIR)) {
      return Silica.ABOVE_LIMIT;
    }
    return Limits.reached(average, ACTION_UG_M3) ? Silica.ACTION_LEVEL : Silica.BELOW_ACTION_LEVEL;
  }

  /**
   * True when soluble chromium(VI) is more than 2 ppm of the dry cement (Regulation (EC) 1907/2006
   * Annex XVII entry 47).
   */
  public static boolean tooMuchChromium(double partsPerMillion) {
    return Check.notNegative("chromium_ppm", partsPerMillion) > CHROMIUM_PPM * (1 + Limits.HAIR);
  }

  /** True when a metal wick core holds more than 0.06 % lead (16 CFR 1500.12(a)(2)). */
  public static boolean tooMuchLead(double leadFractionOfCore) {
    return Check.fraction("lead_fraction", leadFractionOfCore) > LEAD_FRACTION * (1 + Limits.HAIR);
  }
}

package pourwright.cast;

import pourwright.quantity.Check;

/**
 * Pores and relative strength of a portland paste. These are indices to compare two mixes with;
 * none of them is a strength to rely on, and none holds for rapid powders or plaster.
 *
 * <p>Sources: Powers and Brownyard (1946–48) as in Neville, Properties of Concrete; Bentz and
 * Garboczi (NIST) for the joined pores; Abrams (1918) and Feret (1892) as restated.
 */
public final class Paste {
  /** Share of the paste below which capillary pores are no longer joined. Source: NIST model. */
  public static final double PORES_PART = 0.18;

  private static final double CEMENT_ML_PER_G = 0.32;
  private static final double FILLED_ML_PER_G = 0.36;

  private Paste() {}

  /** Capillary pores to a gram of cement, in ml. */
  public static double poresMlPerG(double waterToCement, double hydrated) {
    Check.positive("water_to_cement", waterToCement);
    return waterToCement - FILLED_ML_PER_G * Check.fraction("hydrated_fraction", hydrated);
  }

  /** Capillary pores as a share of the paste's volume. */
  public static double poresOfPaste(double waterToCement, double hydrated) {
    return poresMlPerG(waterToCement, hydrated) / (waterToCement + CEMENT_ML_PER_G);
  }

  /** Gel to space: {@code 0.68α/(0.32α + w/c)}. */
  public static double gelToSpace(double waterToCement, double hydrated) {
    return 0.68 * hydrated / (CEMENT_ML_PER_G * hydrated + waterToCement);
  }

  /** Share of the cement that must react until the pores part; above 1 they never do. */
  public static double hydrationForPartedPores(double waterToCement) {
    return (waterToCement - PORES_PART * (waterToCement + CEMENT_ML_PER_G)) / FILLED_ML_PER_G;
  }

  /** Strength at one water-to-cement ratio over that at another, {@code 4^(1.5(a−b))}. */
  public static double abramsRatio(double waterToCement, double comparedWith) {
    return abrams(waterToCement) / abrams(comparedWith);
  }

  /** Abrams' curve in the form 96.5/4^(1.5·w/c) MPa, for ratios only. */
  static double abrams(double waterToCement) {
    return 96.5 / Math.pow(4, 1.5 * waterToCement);
  }

  /** Feret's index: the cement's share of paste with air, squared. */
  public static double feret(double waterToCement, double cementGPerMl, double airOfPaste) {
    double cement = 1 / cementGPerMl;
    double share = cement * (1 - airOfPaste) / (cement + waterToCement);
    return share * share;
  }

  /** Strength after a time over the final one, C1074's hyperbola. */
  public static double hyperbola(double perDay, double startDays, double days) {
    double t = Math.max(0, days - startDays);
    return perDay * t / (1 + perDay * t);
  }

  /**
   * Strength of a portland casting kept at 20 °C over that at 28 days, {@code e^(s(1−√(28/t)))}.
   * Source: EN 1992-1-1, 3.1.2, from memory.
   *
   * @param s 0.20 for rapid, 0.25 for normal, 0.38 for slow cements
   * @param days above zero
   */
  public static double european(double s, double days) {
    return Math.exp(s * (1 - Math.sqrt(28 / Check.positive("days", days))));
  }
}

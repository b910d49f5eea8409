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

  /**
   * What a gram of reacted cement becomes.
   *
   * @param gelMl hydration product with its own pores, in ml
   * @param cementMl the cement it was, in ml
   */
  public record Gel(double gelMl, double cementMl) {
    /** Powers and Brownyard as in Neville. */
    public static final Gel POWERS = new Gel(0.68, CEMENT_ML_PER_G);

    /** The same with three digits, as textbooks print it. */
    public static final Gel OF_TEXTBOOK = new Gel(0.657, 0.319);

    /** Gel to the space it could fill. */
    public double toSpace(double waterToCement, double hydrated) {
      Check.fraction("hydrated_fraction", hydrated);
      return gelMl
          * hydrated
          / (cementMl * hydrated + Check.positive("water_to_cement", waterToCement));
    }
  }

  /** Gel to space: {@code 0.68α/(0.32α + w/c)}. */
  public static double gelToSpace(double waterToCement, double hydrated) {
    return Gel.POWERS.toSpace(waterToCement, hydrated);
  }

  /** Share of the cement that must react until the pores part; above 1 they never do. */
  public static double hydrationForPartedPores(double waterToCement) {
    return (waterToCement - PORES_PART * (waterToCement + CEMENT_ML_PER_G)) / FILLED_ML_PER_G;
  }

  /**
   * Abrams' law as it is quoted, in MPa after 28 days. The forms differ by half, so none is a
   * strength to rely on; they agree on how much a wetter mix loses.
   */
  public enum Abrams {
    /** {@code 96.5/4^(1.5·w/c)}, a textbook of concrete. */
    OF_TEXTBOOK(96.5, 4, 1.5),
    /** {@code 96/7^(w/c)}, an encyclopedia. */
    OF_ENCYCLOPEDIA(96, 7, 1),
    /** {@code 14000/7^x} psi, x by bulk volume (1918), one of cement weighing 1.506 g/ml. */
    OF_1918(14_000 * RapidClass.MPA_PER_PSI, 7, 1.506);

    private final double most;
    private final double base;
    private final double exponent;

    Abrams(double most, double base, double exponent) {
      this.most = most;
      this.base = base;
      this.exponent = exponent;
    }

    /** The curve's value in MPa, for ratios of two mixes only. */
    public double curveMPa(double waterToCement) {
      Check.positive("water_to_cement", waterToCement);
      return most / Math.pow(base, exponent * waterToCement);
    }

    /** Share of its strength that the wetter of two mixes lacks. */
    public double lost(double drier, double wetter) {
      return 1 - curveMPa(wetter) / curveMPa(drier);
    }
  }

  /** A strength in MPa that goes with a gel-to-space ratio: {@code intrinsic·x³}. Powers (1958). */
  public static double gelMPa(double intrinsicMPa, double gelToSpace) {
    return Check.positive("intrinsic_mpa", intrinsicMPa) * Math.pow(gelToSpace, 3);
  }

  /** Feret's index: the cement's share of paste with air, squared. */
  public static double feret(double waterToCement, double cementGPerMl, double airOfPaste) {
    double cement = 1 / cementGPerMl;
    double share = cement * (1 - airOfPaste) / (cement + waterToCement);
    return share * share;
  }

  /** Feret's curve in MPa, for ratios of two mixes only; the constant is 200 to 300 MPa. */
  public static double feretMPa(
      double constantMPa, double waterToCement, double cementGPerMl, double airOfPaste) {
    return constantMPa * feret(waterToCement, cementGPerMl, airOfPaste);
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

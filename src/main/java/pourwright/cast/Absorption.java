package pourwright.cast;

import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/** What a hardened casting drinks. Measured on her own castings; a tight one drinks little. */
public final class Absorption {
  private Absorption() {}

  /**
   * Absorption and voids of a casting.
   *
   * @param soaked absorption after soaking, share of the dry mass
   * @param boiled absorption after boiling, share of the dry mass
   * @param dryGPerMl bulk density, dry, in g/ml
   * @param grainGPerMl apparent density, in g/ml
   * @param voids permeable pores, share of the volume
   */
  public record Soaking(
      double soaked, double boiled, double dryGPerMl, double grainGPerMl, double voids) {}

  /**
   * From four weighings: dry, soaked, boiled, and hung in water. Source: ASTM C642. Never dried at
   * 110 °C where the binder is plaster or a rapid one.
   */
  public static Soaking soaking(double dryG, double soakedG, double boiledG, double hungG) {
    Check.positive("dry_g", dryG);
    if (!(hungG < dryG && dryG <= soakedG && soakedG <= boiledG)) {
      throw new OutOfRange(
          "soaked_g",
          "the four weights are not in the order hung, dry, soaked, boiled",
          "check which is which");
    }
    double volume = boiledG - hungG;
    return new Soaking(
        (soakedG - dryG) / dryG,
        (boiledG - dryG) / dryG,
        dryG / volume,
        dryG / (dryG - hungG),
        (boiledG - dryG) / volume);
  }

  /** Water drawn in over a face, as a depth in mm. Source: ASTM C1585. */
  public static double depthMm(double gainG, double faceMm2) {
    return gainG / (Check.positive("face_mm2", faceMm2) * 0.001);
  }

  /** A mass gained at a time. */
  public record Gain(double s, double g) {}

  /** Sorptivity with how well the line fits. */
  public record Sorptivity(double mmPerRootS, double correlation) {
    /** The same in mm/√min, as tables give it. */
    public double mmPerRootMin() {
      return mmPerRootS * Math.sqrt(60);
    }
  }

  /** A sorptivity in mm/√min as one in mm/√s. */
  public static double ofRootMinutes(double mmPerRootMin) {
    return mmPerRootMin / Math.sqrt(60);
  }

  /** Slope of depth over the root of time, in mm/√s. Source: ASTM C1585, by least squares. */
  public static Sorptivity sorptivity(List<Gain> gains, double faceMm2) {
    if (gains.size() < 3) {
      throw new OutOfRange("readings", "a slope needs three readings", "weigh once more");
    }
    org.hipparchus.stat.regression.SimpleRegression line =
        new org.hipparchus.stat.regression.SimpleRegression();
    gains.forEach(
        g -> line.addData(Math.sqrt(Check.notNegative("s", g.s())), depthMm(g.g(), faceMm2)));
    return new Sorptivity(line.getSlope(), line.getR());
  }

  /**
   * The factor from a sorptivity measured with water to that of another liquid, {@code √(γ/η)} over
   * that of water. Source: Washburn (1921) scaling as used by Hall and Hoff. Organic liquids in
   * cement may run one to three times faster.
   */
  public static double liquidToWater(double tensionNPerM, double viscosityPaS) {
    return Math.sqrt((tensionNPerM / viscosityPaS) / (0.0728 / 0.001002));
  }

  /** Seconds until a liquid front has passed a wall, {@code (L·f/S)²}. */
  public static double secondsThrough(double wallMm, double openPores, double mmPerRootS) {
    double root = wallMm * openPores / Check.positive("sorptivity_mm_per_root_s", mmPerRootS);
    return root * root;
  }

  /**
   * How far a liquid is drawn into a straight tube that it wets, in mm: {@code √(γ·r·t/2η)}.
   * Source: Washburn (1921) as restated by NIST, Garboczi and Bentz. With a pore radius measured on
   * concrete it says a hundred times too much; for explanations only.
   *
   * @param tensionNPerM of the liquid
   * @param viscosityPaS of the liquid
   * @param radiusUm of the tube, in µm
   * @param seconds since it touched
   */
  public static double drawnInMm(
      double tensionNPerM, double viscosityPaS, double radiusUm, double seconds) {
    Check.positive("radius_um", radiusUm);
    Check.notNegative("s", seconds);
    double square = tensionNPerM * radiusUm * 1e-6 * seconds / (2 * viscosityPaS);
    return 1000 * Math.sqrt(square);
  }
}

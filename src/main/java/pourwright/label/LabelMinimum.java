package pourwright.label;

import pourwright.quantity.Check;

/**
 * Least sizes for a package by its capacity: label and pictogram of Regulation (EC) 1272/2008 Annex
 * I Table 1.3, height of a small x of Regulation (EU) 2024/2865 (its date of application is moving:
 * verify).
 *
 * @param labelWidthMm asked where possible
 * @param labelHeightMm asked where possible
 * @param pictogramMm least side of the red square, never smaller
 * @param pictogramWantedMm side asked where possible
 * @param xHeightMm least height of a small x
 */
public record LabelMinimum(
    double labelWidthMm,
    double labelHeightMm,
    double pictogramMm,
    double pictogramWantedMm,
    double xHeightMm) {

  /**
   * The sizes for a capacity.
   *
   * @param capacityMl of the package, greater than 0
   */
  public static LabelMinimum of(double capacityMl) {
    Check.positive("capacity_ml", capacityMl);
    if (capacityMl <= 500) {
      return new LabelMinimum(52, 74, 10, 16, 1.2);
    }
    if (capacityMl <= 3_000) {
      return new LabelMinimum(52, 74, 10, 16, 1.4);
    }
    if (capacityMl <= 50_000) {
      return new LabelMinimum(74, 105, 23, 23, 1.8);
    }
    if (capacityMl <= 500_000) {
      return new LabelMinimum(105, 148, 32, 32, 2.0);
    }
    return new LabelMinimum(148, 210, 46, 46, 2.0);
  }

  /** Least area of one pictogram: a fifteenth of the least label, and never below 100 mm². */
  public double pictogramAreaMm2() {
    return Math.max(100, labelWidthMm * labelHeightMm / 15);
  }
}

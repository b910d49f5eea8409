package pourwright.cast;

/**
 * Plaster: water bound by setting, and what is left when it has dried. From molar masses (IUPAC
 * 2021) and dihydrate of 2.32 g/ml, from memory; expansion on setting neglected.
 */
public final class Gypsum {
  /** Water that a gram of hemihydrate binds, in g: 1.5 × 18.015 / 145.15. */
  public static final double BOUND_WATER = 1.5 * 18.015 / 145.15;

  private static final double POWDER_G_PER_ML = 2.63;
  private static final double SET_G_PER_ML = 2.32;

  private Gypsum() {}

  /** Density of dried plaster mixed at a water-to-powder ratio, in g/ml. */
  public static double dryGPerMl(double waterToPowder) {
    return (1 + BOUND_WATER) / slurryMl(waterToPowder);
  }

  /** Pores of dried plaster as a share of its volume. */
  public static double pores(double waterToPowder) {
    return 1 - (1 + BOUND_WATER) / SET_G_PER_ML / slurryMl(waterToPowder);
  }

  private static double slurryMl(double waterToPowder) {
    return 1 / POWDER_G_PER_ML + waterToPowder;
  }
}

package pourwright.quantity;

/**
 * A density as a whole number of milligrams in a litre, a millionth of water's.
 *
 * @param milligramsPerLitre greater than zero
 */
public record Density(long milligramsPerLitre) implements Comparable<Density> {

  /** Refuses what weighs nothing. */
  public Density {
    Check.positive("density", milligramsPerLitre);
  }

  /** The nearest density to a number of grams in a millilitre. */
  public static Density ofGramsPerMillilitre(double gramsPerMillilitre) {
    Check.between("density_g_per_ml", gramsPerMillilitre, 1e-6, 1e6);
    return new Density(Math.round(gramsPerMillilitre * 1e6));
  }

  /** Grams in a millilitre, for kernels and display. */
  public double gramsPerMillilitre() {
    return milligramsPerLitre / 1e6;
  }

  /** The mass of a volume, to the nearest microgram. */
  public Mass of(Volume volume) {
    return new Mass(Math.round(volume.nanolitres() * gramsPerMillilitre()));
  }

  /** The volume of a mass, to the nearest nanolitre. */
  public Volume of(Mass mass) {
    return new Volume(Math.round(mass.micrograms() / gramsPerMillilitre()));
  }

  @Override
  public int compareTo(Density other) {
    return Long.compare(milligramsPerLitre, other.milligramsPerLitre);
  }
}

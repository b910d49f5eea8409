package pourwright.cast;

import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * The powder of a mix: a cement, a plaster or a premix.
 *
 * @param particleGPerMl density of its grains, in g/ml, greater than zero
 * @param bulkGPerMl mass of a scooped millilitre, in g/ml, less than the grains'; null where it is
 *     not known
 * @param cementFraction share of the powder that is cement, 0 to 1; null where it is not known
 * @param waterLow least water for its mass by its sheet; null where it says nothing
 * @param waterHigh most water for its mass by its sheet; null where it says nothing
 */
public record Powder(
    double particleGPerMl,
    @Nullable Double bulkGPerMl,
    @Nullable Double cementFraction,
    @Nullable Double waterLow,
    @Nullable Double waterHigh) {

  /** Checks all ranges. */
  public Powder {
    Check.positive("particle_density_g_per_ml", particleGPerMl);
    if (bulkGPerMl != null) {
      Check.positive("bulk_density_g_per_ml", bulkGPerMl);
      if (bulkGPerMl > particleGPerMl) {
        throw new OutOfRange(
            "bulk_density_g_per_ml",
            "the powder as scooped would be denser than its grains",
            "a scooped powder holds air; the two densities may be exchanged");
      }
    }
    if (cementFraction != null) {
      Check.fraction("cement_fraction_of_powder", cementFraction);
    }
    if (waterLow != null) {
      Check.notNegative("water_to_powder_low", waterLow);
    }
    if (waterHigh != null) {
      Check.notNegative("water_to_powder_high", waterHigh);
    }
  }

  /** What so many grams of its grains fill, without the air between them, in ml. */
  public double grainsMl(double grams) {
    return Check.notNegative("powder_g", grams) / particleGPerMl;
  }

  /** A powder of which the densities are known and no more. */
  public static Powder of(double particleGPerMl, @Nullable Double bulkGPerMl) {
    return new Powder(particleGPerMl, bulkGPerMl, null, null, null);
  }
}

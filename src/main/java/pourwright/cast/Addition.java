package pourwright.cast;

import pourwright.quantity.Check;

/**
 * An addition that goes with the powder: sand, filler, pigment, fibre, admixture, latex.
 *
 * @param kind what it is there for
 * @param perPowder its mass to a mass of one of powder, zero or more
 * @param particleGPerMl density of its grains, or of a liquid as it is, in g/ml, above zero
 * @param waterFraction share of it that is water and counts as mix water; 0 for what is dry
 */
public record Addition(Kind kind, double perPowder, double particleGPerMl, double waterFraction) {

  /** What an addition is there for. */
  public enum Kind {
    /** Sand or another filler. */
    SAND,
    /** Dry pigment, which has a limit on the cement. */
    PIGMENT,
    /** Fibre. */
    FIBRE,
    /** Plasticizer, retarder, latex and the like. */
    ADMIXTURE,
    /** Liquid colour in proportion to the powder. */
    LIQUID_COLOUR
  }

  /** A dry addition. */
  public Addition(Kind kind, double perPowder, double particleGPerMl) {
    this(kind, perPowder, particleGPerMl, 0);
  }

  /** Checks all numbers. */
  public Addition {
    Check.notNegative(kind == Kind.PIGMENT ? "fraction_of_powder" : "per_powder_mass", perPowder);
    Check.positive("particle_density_g_per_ml", particleGPerMl);
    Check.fraction("water_fraction", waterFraction);
  }

  /** Millilitres for a gram of powder. */
  double mlPerPowderG() {
    return perPowder / particleGPerMl;
  }

  /** Grams of its water for a gram of powder. */
  double waterPerPowder() {
    return perPowder * waterFraction;
  }

  /** Grams of solids that came with water, for a gram of powder: polymer, for most. */
  double polymerPerPowder() {
    return waterFraction == 0 ? 0 : perPowder * (1 - waterFraction);
  }
}

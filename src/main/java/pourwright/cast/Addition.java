package pourwright.cast;

import pourwright.quantity.Check;

/**
 * A dry addition that goes with the powder: sand, filler, pigment, fibre, admixture.
 *
 * @param kind what it is there for
 * @param perPowder its mass to a mass of one of powder, zero or more
 * @param particleGPerMl density of its grains, in g/ml, greater than zero
 */
public record Addition(Kind kind, double perPowder, double particleGPerMl) {

  /** What an addition is there for. */
  public enum Kind {
    /** Sand or another filler. */
    SAND,
    /** Dry pigment, which has a limit on the cement. */
    PIGMENT,
    /** Fibre. */
    FIBRE,
    /** Plasticizer, retarder and the like. */
    ADMIXTURE
  }

  /** Checks both numbers. */
  public Addition {
    Check.notNegative(kind == Kind.PIGMENT ? "fraction_of_powder" : "per_powder_mass", perPowder);
    Check.positive("particle_density_g_per_ml", particleGPerMl);
  }

  /** Millilitres of grains for a gram of powder. */
  double mlPerPowderG() {
    return perPowder / particleGPerMl;
  }
}

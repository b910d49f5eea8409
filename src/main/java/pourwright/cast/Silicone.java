package pourwright.cast;

import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/** Making a mold: rubber for a box around a master, what it shrinks, how far a thin one bulges. */
public final class Silicone {
  private Silicone() {}

  /**
   * The two parts of a rubber, in g.
   *
   * @param partAG the base
   * @param partBG the hardener
   */
  public record Parts(double partAG, double partBG) {
    /** Both together. */
    public double totalG() {
      return partAG + partBG;
    }
  }

  /**
   * Rubber that fills a box around a master.
   *
   * @param boxMl inside of the box up to the pour line, in ml
   * @param masterMl what the master takes up of it, in ml; by drawing or by filling with water
   * @param gPerMl density of the mixed rubber, by its sheet
   * @param bToA mass of part B to one of part A
   * @param wasteFraction multiplies: 0.05 means times 1.05
   */
  public static Parts forBox(
      double boxMl, double masterMl, double gPerMl, double bToA, double wasteFraction) {
    Check.positive("box_ml", boxMl);
    Check.notNegative("master_ml", masterMl);
    if (masterMl >= boxMl) {
      throw new OutOfRange(
          "master_ml", "the master is larger than the box", "check both, or take a larger box");
    }
    double total =
        (boxMl - masterMl)
            * Check.positive("density_g_per_ml", gPerMl)
            * (1 + Check.notNegative("waste_fraction", wasteFraction));
    double a = total / (1 + Check.notNegative("b_to_a_by_mass", bToA));
    return new Parts(a, total - a);
  }

  /**
   * What one mold costs to make.
   *
   * @param rubberG both parts together, in g
   * @param pricePerKg of the rubber
   * @param more box, shell and hands, in the same money
   */
  public static double cost(double rubberG, double pricePerKg, double more) {
    return Check.notNegative("rubber_g", rubberG) / 1000 * Check.notNegative("price", pricePerKg)
        + Check.notNegative("more", more);
  }

  /** What a piece carries of a mold's cost when it lasts so many pieces. */
  public static double costOfPiece(double moldCost, double pieces) {
    return moldCost / Check.positive("pieces", pieces);
  }

  /** What a length of the master becomes in the casting, in mm. */
  public static double shrunkMm(double masterMm, double linear) {
    return masterMm * (1 - Check.fraction("shrinkage_fraction", linear));
  }

  /** Share of a volume lost when every length shrinks by a share. */
  public static double volumeShrink(double linear) {
    return 1 - Math.pow(1 - Check.fraction("shrinkage_fraction", linear), 3);
  }

  /** Young's modulus in MPa from Shore A. Source: Gent (1958), from memory. */
  public static double modulusMPa(double shoreA) {
    Check.between("shore_a", shoreA, 5, 90);
    return 0.0981 * (56 + 7.62336 * shoreA) / (0.137505 * (254 - 2.54 * shoreA));
  }

  /**
   * Share by which a thin sleeve widens at its foot under the mix in it: ρ·g·h·r/(E·t).
   *
   * @param freshGPerMl density of the mix
   * @param depthMm depth of the mix
   */
  public static double bulge(
      double freshGPerMl, double depthMm, double radiusMm, double wallMm, double shoreA) {
    double pressureMPa = freshGPerMl * 1000 * 9.80665 * depthMm / 1000 / 1e6;
    return pressureMPa * radiusMm / (modulusMPa(shoreA) * Check.positive("wall_mm", wallMm));
  }
}

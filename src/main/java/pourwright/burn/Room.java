package pourwright.burn;

import pourwright.quantity.Check;

/**
 * The room the candle stands in, without a draught.
 *
 * @param celsius −10 to 45 °C
 * @param waxEmissivity 0 to 1
 * @param convection given coefficients, or computed from correlations
 */
public record Room(double celsius, double waxEmissivity, Convection convection) {

  /** Checks the ranges. */
  public Room {
    Check.between("room_c", celsius, -10, 45);
    Check.fraction("wax_emissivity", waxEmissivity);
  }

  /**
   * Convection coefficients in W/(m²·K).
   *
   * @param correlated true when they follow from the surfaces' temperatures (vertical plate and
   *     level faces) and the numbers here are not used but for the inner wall
   */
  public record Convection(
      double wax, double outer, double inner, double base, boolean correlated) {

    /** Checks the ranges. */
    public Convection {
      Check.between("wax", wax, 0, 1000);
      Check.between("outer", outer, 0, 1000);
      Check.between("inner", inner, 0, 1000);
      Check.between("base", base, 0, 1000);
    }

    /** The usual coefficients: wax 8, outer wall and rim 6, inner wall 5, base 3. */
    public static Convection usual() {
      return new Convection(8, 6, 5, 3, false);
    }

    /** From correlations. */
    public static Convection fromCorrelations() {
      return new Convection(8, 6, 5, 3, true);
    }
  }
}

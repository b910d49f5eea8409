package pourwright.cast;

import pourwright.quantity.Check;

/**
 * Stresses that a temperature difference makes in a wall, and steam in a wet one. For cautions, not
 * for a promise: no wall thickness is made good by these numbers.
 */
public final class HeatStress {
  private HeatStress() {}

  /**
   * An elastic wall.
   *
   * @param modulusGPa Young's modulus
   * @param expansionPerK linear
   * @param poisson ratio
   */
  public record Wall(double modulusGPa, double expansionPerK, double poisson) {
    /** Typical mortar, from memory: 25 GPa, 1e-5 per K, 0.2. */
    public static final Wall MORTAR = new Wall(25, 1e-5, 0.2);

    private double perK() {
      return modulusGPa * 1000 * expansionPerK / (1 - poisson);
    }

    /** MPa in a face cooled at once by {@code kelvin}. Source: textbook form, Callister. */
    public double suddenMPa(double kelvin) {
      return perK() * kelvin;
    }

    /** MPa in the faces of a wall with a steady difference between them. */
    public double steadyMPa(double kelvin) {
      return perK() * kelvin / 2;
    }

    /** Difference at which a face cooled at once reaches a tensile strength. */
    public double suddenLimitK(double strengthMPa) {
      return strengthMPa / perK();
    }

    /** Steady difference from face to face at which the stress reaches a strength, in K. */
    public double steadyLimitK(double strengthMPa) {
      return 2 * suddenLimitK(strengthMPa);
    }

    /**
     * MPa at the outer face of a round wall that is hotter inside. Source: Timoshenko, thick
     * cylinder, from memory.
     */
    public double roundOuterMPa(double innerMm, double outerMm, double kelvin) {
      return round(innerMm, outerMm, kelvin, innerMm);
    }

    /** MPa at the inner face of a round wall that is hotter inside; pressed, so below zero. */
    public double roundInnerMPa(double innerMm, double outerMm, double kelvin) {
      return -round(innerMm, outerMm, kelvin, outerMm);
    }

    private double round(double innerMm, double outerMm, double kelvin, double otherMm) {
      double log = Math.log(outerMm / innerMm);
      double ring = outerMm * outerMm - innerMm * innerMm;
      double shape = 1 - 2 * otherMm * otherMm / ring * log;
      return perK() * kelvin / (2 * log) * (otherMm == innerMm ? shape : -shape);
    }
  }

  /**
   * Pressure of steam over water, in kPa. Source: Wagner and Pruss, J. Phys. Chem. Ref. Data 31
   * (2002) 387, equation 2.5.
   */
  public static double steamKPa(double celsius) {
    Check.between("celsius", celsius, 0, 370);
    double k = celsius + 273.15;
    double t = 1 - k / 647.096;
    double sum =
        -7.85951783 * t
            + 1.84408259 * Math.pow(t, 1.5)
            - 11.7866497 * Math.pow(t, 3)
            + 22.6807411 * Math.pow(t, 3.5)
            - 15.9618719 * Math.pow(t, 4)
            + 1.80122502 * Math.pow(t, 7.5);
    return 22064 * Math.exp(647.096 / k * sum);
  }

  /**
   * Litres of saturated steam that a gram of water in a wet wall becomes. Source: Wagner and Pruss
   * (2002), equation 2.7, density of saturated vapour; coefficients from memory, met by the steam
   * tables.
   */
  public static double steamLitresPerGram(double celsius) {
    Check.between("celsius", celsius, 0, 370);
    double t = 1 - (celsius + 273.15) / 647.096;
    double sum =
        -2.03150240 * Math.pow(t, 2 / 6.0)
            - 2.68302940 * Math.pow(t, 4 / 6.0)
            - 5.38626492 * Math.pow(t, 8 / 6.0)
            - 17.2991605 * Math.pow(t, 18 / 6.0)
            - 44.7586581 * Math.pow(t, 37 / 6.0)
            - 63.9201063 * Math.pow(t, 71 / 6.0);
    return 1 / (322 * Math.exp(sum));
  }

  /**
   * Conductivity of a dry dense casting, lower curve, in W/(m·K). Source: EN 1992-1-2, from memory.
   */
  public static double conductivityLow(double celsius) {
    double h = celsius / 100;
    return 1.36 - 0.136 * h + 0.0057 * h * h;
  }
}

package pourwright.cast;

/**
 * Least strength of packaged rapid mixes by their class, for reading a bag; a casting's own
 * strength is not told by it. Source: ASTM C928, table 1.
 */
public enum RapidClass {
  /** Rapid. */
  R1(3.5, 14, 28),
  /** Very rapid. */
  R2(7, 21, 28),
  /** Very rapid, strongest. */
  R3(21, 35, 35);

  /** Megapascals of a pound-force on a square inch. Source: NIST SP 811. */
  public static final double MPA_PER_PSI = 0.006894757293168;

  private final double threeHoursMPa;
  private final double oneDayMPa;
  private final double sevenDaysMPa;

  RapidClass(double threeHoursMPa, double oneDayMPa, double sevenDaysMPa) {
    this.threeHoursMPa = threeHoursMPa;
    this.oneDayMPa = oneDayMPa;
    this.sevenDaysMPa = sevenDaysMPa;
  }

  /** A strength that a bag gives in pounds-force on a square inch, in MPa. */
  public static double ofPsi(double psi) {
    return psi * MPA_PER_PSI;
  }

  /** After three hours, in MPa. */
  public double threeHoursMPa() {
    return threeHoursMPa;
  }

  /** After a day, in MPa. */
  public double oneDayMPa() {
    return oneDayMPa;
  }

  /** After seven days, in MPa. */
  public double sevenDaysMPa() {
    return sevenDaysMPa;
  }
}

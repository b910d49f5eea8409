package pourwright.label;

/**
 * Least height of cautionary letters by the area of the principal display panel: 16 CFR 1500.121(c)
 * Table 1, from memory. It is law for hazardous household products; for a candle's fire warnings,
 * whose own standard was not read, it is the fallback of the house.
 */
public final class CautionLetters {
  private static final double MM = 25.4;
  private static final double SQUARE_MM = MM * MM;
  private static final double[] SQUARE_INCHES = {2, 5, 10, 15, 30};
  private static final double[] SIGNAL = {
    3.0 / 64, 1.0 / 16, 3.0 / 32, 7.0 / 64, 1.0 / 8, 5.0 / 32
  };
  private static final double[] OTHER = {
    1.0 / 32, 3.0 / 64, 1.0 / 16, 1.0 / 16, 5.0 / 64, 3.0 / 32
  };

  private CautionLetters() {}

  /** Height of a capital of the signal word, mm. */
  public static double signalMm(double panelMm2) {
    return SIGNAL[band(panelMm2)] * MM;
  }

  /** Height of a capital of any other cautionary text, mm. */
  public static double otherMm(double panelMm2) {
    return OTHER[band(panelMm2)] * MM;
  }

  private static int band(double panelMm2) {
    double area = panelMm2 / SQUARE_MM;
    int band = 0;
    while (band < SQUARE_INCHES.length && area > SQUARE_INCHES[band] * (1 + 1e-9)) {
      band++;
    }
    return band;
  }
}

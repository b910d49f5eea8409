package pourwright.burn;

/**
 * Rules of thumb and simple theory of candle flames, for reading beside measured values; burn rates
 * are measured, never taken from here.
 */
public final class FlameRules {
  private FlameRules() {}

  /**
   * A fuel by its atoms.
   *
   * @param oxygenPerKg kg of oxygen that 1 kg burns with
   */
  public record Fuel(double oxygenPerKg) {

    /** The fuel CcHhOo burnt to carbon dioxide and water. */
    public static Fuel of(int carbon, int hydrogen, int oxygen) {
      double mass = 12.011 * carbon + 1.008 * hydrogen + 15.999 * oxygen;
      double needed = 2 * carbon + hydrogen / 2.0 - oxygen;
      return new Fuel(needed * 15.999 / mass);
    }

    /**
     * Net heat of combustion in J/kg by oxygen consumption, 12.7e6 J/kg of oxygen for alkanes and
     * about 12.75e6 for esters (Huggett, Fire and Materials 4 (1980) 61, from memory; ±2 to 4 %).
     */
    public double netHeat(double perKgOxygen) {
      return oxygenPerKg * perKgOxygen;
    }
  }

  /** Share of a point's radiation that falls on a disc under it; both in mm. */
  public static double discFactor(double heightMm, double radiusMm) {
    return 0.5 * (1 - heightMm / Math.hypot(heightMm, radiusMm));
  }

  /** Flux in W/m² of a point that radiates {@code watts}, at a distance from its foot; mm. */
  public static double flux(double watts, double heightMm, double distanceMm) {
    double d = Math.hypot(heightMm, distanceMm) / 1000;
    return watts * heightMm / 1000 / (4 * Math.PI * d * d * d);
  }

  /**
   * Height in mm of a laminar flame over the wick's tip, from a burn rate in mg/s. Source: Roper,
   * Combustion and Flame 29 (1977) 219, circular port, formula from memory, for pentacosane; ±25 %
   * against a measured candle.
   */
  public static double flameHeightMm(double milligramsPerS) {
    double vapour = milligramsPerS * 1e-6 / 0.35269 * 8.314 * 293 / 101_325;
    double hot = Math.pow(293.0 / 1500, 0.67);
    double air = 181;
    return 1000 * vapour * hot / (4 * Math.PI * 2.0e-5 * Math.log(1 + 1 / air));
  }

  /**
   * Spalding's transfer number of a wick in air: oxygen 0.233, a fifth radiated, boiling at 616 K
   * (n-eicosane, NIST WebBook) in air at 303 K, gasified by 1.1 MJ/kg.
   */
  static double filmTransferNumber() {
    double oxygen = 0.233 * (1 - 0.2) * 12.7e6;
    double warming = 1200 * (616 - 303);
    return (oxygen - warming) / 1.1e6;
  }

  /**
   * Burn rate in mg/s of an exposed wick by film theory, for the trend only (±50 %): it grows with
   * the exposed length and hardly with the diameter.
   */
  public static double filmBurnRateMgPerS(double diameterMm, double lengthMm) {
    double film = 1.5 * 0.07 / (diameterMm / 1000);
    double area = Math.PI * diameterMm * lengthMm * 1e-6;
    return 1e6 * area * film / 1200 * Math.log(1 + filmTransferNumber());
  }
}

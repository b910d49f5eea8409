package pourwright.heat;

/**
 * Free convection and radiation at surfaces in still air. Each is pure and takes SI units; ranges
 * as printed by the source.
 */
public final class Correlations {
  /** Stefan-Boltzmann constant, W/(m²·K⁴) (CODATA, exact since 2019). */
  public static final double SIGMA = 5.670374419e-8;

  private static final double GRAVITY = 9.81;
  private static final double KELVIN = 273.15;
  private static final double PRESSURE = 101_325;

  private Correlations() {}

  /**
   * Air at one atmosphere: viscosity by Sutherland's formula, conductivity and density as in the US
   * Standard Atmosphere (1976), heat capacity 1006 J/(kg·K). Range −50 to 200 °C.
   */
  public record Air(double viscosity, double diffusivity, double conductivity, double kelvin) {

    /** Air at a temperature in °C. */
    public static Air at(double celsius) {
      double t = celsius + KELVIN;
      double mu = 1.458e-6 * Math.pow(t, 1.5) / (t + 110.4);
      double k = 2.64638e-3 * Math.pow(t, 1.5) / (t + 245.4 * Math.pow(10, -12 / t));
      double rho = PRESSURE / (287.05 * t);
      return new Air(mu / rho, k / (rho * 1006), k, t);
    }

    /** Prandtl number. */
    public double prandtl() {
      return viscosity / diffusivity;
    }

    /** Rayleigh number of a body of that length, that much warmer or colder than the air. */
    public double rayleigh(double lengthM, double deltaK) {
      double buoyant = GRAVITY * Math.abs(deltaK) / kelvin;
      return buoyant * lengthM * lengthM * lengthM / (viscosity * diffusivity);
    }
  }

  /**
   * Nusselt number of a vertical plate, any Rayleigh number. Source: Churchill and Chu, Int. J.
   * Heat Mass Transfer 18 (1975) 1323.
   */
  public static double verticalPlate(double prandtl, double rayleigh) {
    double damping = Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
    double root = 0.825 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / damping;
    return root * root;
  }

  /** The same in its laminar form, Rayleigh number below 1e9. */
  public static double verticalPlateLaminar(double prandtl, double rayleigh) {
    double damping = Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), 4.0 / 9);
    return 0.68 + 0.670 * Math.pow(rayleigh, 0.25) / damping;
  }

  /** Nusselt number of a lying cylinder. Source: Churchill and Chu (1975). */
  public static double lyingCylinder(double prandtl, double rayleigh) {
    double damping = Math.pow(1 + Math.pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
    double root = 0.60 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / damping;
    return root * root;
  }

  /**
   * Nusselt number of a level face with the hot side up, length area over perimeter, Rayleigh 1e4
   * to 1e11. Source: McAdams; Lloyd and Moran, J. Heat Transfer 96 (1974) 443.
   */
  public static double hotFaceUp(double rayleigh) {
    return rayleigh < 1e7 ? 0.54 * Math.pow(rayleigh, 0.25) : 0.15 * Math.pow(rayleigh, 1.0 / 3);
  }

  /** Nusselt number of a level face with the hot side down, 1e5 to 1e10. Source: McAdams. */
  public static double hotFaceDown(double rayleigh) {
    return 0.27 * Math.pow(rayleigh, 0.25);
  }

  /**
   * Nusselt number of a standing cylinder. Source: Popiel, Wojtkowiak and Bober, Exp. Therm. Fluid
   * Sci. 32 (2007) 607, for Grashof 1e4 to 4e9 and Pr 0.01 to 100.
   */
  public static double standingCylinder(
      double prandtl, double grashof, double heightM, double diameterM) {
    return verticalPlate(prandtl, grashof * prandtl)
        * slenderFactor(prandtl, grashof, heightM, diameterM);
  }

  /** By how much a slender standing cylinder exceeds the plate. Source: Popiel (2007). */
  public static double slenderFactor(
      double prandtl, double grashof, double heightM, double diameterM) {
    double b = 0.0571322 + 0.20305 * Math.pow(prandtl, -0.43);
    double c =
        0.9165 - 0.0043 * Math.sqrt(prandtl) + 0.01333 * Math.log(prandtl) + 0.0004809 / prandtl;
    return 1 + b * Math.pow(Math.sqrt(32) * Math.pow(grashof, -0.25) * heightM / diameterM, c);
  }

  /** True when a standing cylinder is fat enough to be taken as a plate: D/L ≥ 35/Gr^¼. */
  public static boolean plateWillDo(double grashof, double heightM, double diameterM) {
    return diameterM / heightM >= 35 / Math.pow(grashof, 0.25);
  }

  /** Convection coefficient of a vessel's side, W/(m²·K). */
  public static double side(double surfaceC, double roomC, double heightM, double diameterM) {
    Air air = Air.at((surfaceC + roomC) / 2);
    double rayleigh = air.rayleigh(heightM, surfaceC - roomC);
    double grashof = rayleigh / air.prandtl();
    if (grashof <= 0) {
      return 0.68 * air.conductivity() / heightM;
    }
    double nusselt = standingCylinder(air.prandtl(), grashof, heightM, diameterM);
    return nusselt * air.conductivity() / heightM;
  }

  /** Convection coefficient of a level face, W/(m²·K); length is area over perimeter. */
  public static double level(double surfaceC, double roomC, double lengthM, boolean facesUp) {
    Air air = Air.at((surfaceC + roomC) / 2);
    double rayleigh = air.rayleigh(lengthM, surfaceC - roomC);
    double nusselt = facesUp == surfaceC >= roomC ? hotFaceUp(rayleigh) : hotFaceDown(rayleigh);
    return Math.max(1, nusselt) * air.conductivity() / lengthM;
  }

  /** Radiation coefficient, exact: ε·σ·(T² + T₀²)·(T + T₀), W/(m²·K). */
  public static double radiation(double emissivity, double surfaceC, double roomC) {
    double t = surfaceC + KELVIN;
    double room = roomC + KELVIN;
    return emissivity * SIGMA * (t * t + room * room) * (t + room);
  }

  /** Radiated flux to a black room, W/m²; temperatures in K. */
  public static double radiatedFlux(double emissivity, double kelvin, double roomKelvin) {
    return emissivity * SIGMA * (Math.pow(kelvin, 4) - Math.pow(roomKelvin, 4));
  }
}

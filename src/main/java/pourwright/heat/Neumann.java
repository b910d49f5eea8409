package pourwright.heat;

/**
 * Melting of a half space from a surface held at a temperature: Neumann's solution.
 *
 * <p>Source: Crank, Free and Moving Boundary Problems, equation 3.14 (one phase); Alexiades and
 * Solomon, Mathematical Modeling of Melting and Freezing Processes (1993), section 2.2 (two
 * phases). Range: a sharp melting point, equal densities, a body long enough that its far end stays
 * as it was.
 *
 * @param wax the substance; its melting range must have no width
 * @param initialC °C, at most the melting point
 * @param surfaceC °C, above the melting point
 */
public record Neumann(Melting wax, double initialC, double surfaceC) {

  /** Stefan number of the liquid, c·ΔT/L. */
  public double stefan() {
    return wax.heatLiquid() * (surfaceC - wax.fromC()) / wax.latent();
  }

  private double diffusivityLiquid() {
    return wax.liquid() / (wax.density() * wax.heatLiquid());
  }

  private double diffusivitySolid() {
    return wax.solid() / (wax.density() * wax.heatSolid());
  }

  /** λ of the front {@code s = 2·λ·√(α·t)}. */
  public double lambda() {
    return Special.root(this::imbalance, 1e-9, 10);
  }

  private double imbalance(double l) {
    double liquid = Math.exp(-l * l) / Special.erf(l);
    double v = Math.sqrt(diffusivityLiquid() / diffusivitySolid());
    double cold = (wax.fromC() - initialC) / (surfaceC - wax.fromC());
    double solid = wax.solid() / wax.liquid() * v * cold / Special.erfcx(l * v);
    return liquid - solid - Math.sqrt(Math.PI) * l / stefan();
  }

  /** Distance of the front from the surface, m. */
  public double frontM(double seconds) {
    return 2 * lambda() * Math.sqrt(diffusivityLiquid() * seconds);
  }

  /** When the front is that far from the surface, s. */
  public double secondsTo(double frontM) {
    double half = frontM / (2 * lambda());
    return half * half / diffusivityLiquid();
  }

  /** Temperature at a depth, °C. */
  public double celsius(double depthM, double seconds) {
    double l = lambda();
    double melt = wax.fromC();
    if (depthM <= frontM(seconds)) {
      double x = depthM / (2 * Math.sqrt(diffusivityLiquid() * seconds));
      return surfaceC - (surfaceC - melt) * Special.erf(x) / Special.erf(l);
    }
    double x = depthM / (2 * Math.sqrt(diffusivitySolid() * seconds));
    double at = l * Math.sqrt(diffusivityLiquid() / diffusivitySolid());
    double ratio = Special.erfcx(x) / Special.erfcx(at) * Math.exp(at * at - x * x);
    return initialC + (melt - initialC) * ratio;
  }
}

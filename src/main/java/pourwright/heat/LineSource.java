package pourwright.heat;

/**
 * Melting round a line that gives off heat evenly, the closest exact likeness of a wick.
 *
 * <p>Source: Carslaw and Jaeger, Conduction of Heat in Solids, chapter XI; Özışık, Heat Conduction,
 * phase change in cylindrical symmetry. Range: as {@link Neumann}.
 *
 * @param wax the substance; its melting range must have no width
 * @param initialC °C, at most the melting point
 * @param wattsPerM heat of the line, W/m, greater than zero
 */
public record LineSource(Melting wax, double initialC, double wattsPerM) {

  private double diffusivityLiquid() {
    return wax.liquid() / (wax.density() * wax.heatLiquid());
  }

  private double ratio() {
    return diffusivityLiquid() * wax.density() * wax.heatSolid() / wax.solid();
  }

  /** λ of the front {@code r = 2·λ·√(α·t)}. */
  public double lambda() {
    return Special.root(this::imbalance, 1e-6, 10);
  }

  private double imbalance(double l) {
    double square = l * l;
    double into = wattsPerM / (4 * Math.PI) * Math.exp(-square);
    double on = wax.solid() * (wax.fromC() - initialC) / Special.e1TimesExp(square * ratio());
    return into - on - wax.density() * wax.latent() * diffusivityLiquid() * square;
  }

  /** Radius of the melted cylinder, m. */
  public double frontM(double seconds) {
    return 2 * lambda() * Math.sqrt(diffusivityLiquid() * seconds);
  }
}

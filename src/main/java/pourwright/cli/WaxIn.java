package pourwright.cli;

import pourwright.heat.Melting;
import pourwright.quantity.OutOfRange;

/** Reads the fields of a melting substance. */
final class WaxIn {
  private WaxIn() {}

  /** The substance in this object: {@code melt_c}, or {@code melt_from_c} and {@code melt_to_c}. */
  static Melting melting(JsonIn in) {
    boolean sharp = in.has("melt_c");
    double from = in.number(sharp ? "melt_c" : "melt_from_c", Range.CELSIUS);
    double to = sharp ? from : in.number("melt_to_c", Range.CELSIUS);
    double latent = in.number("latent_j_per_kg", Range.POSITIVE);
    double solidK = in.number("conductivity_solid_w_per_m_k", Range.POSITIVE);
    double liquidK = in.number("conductivity_liquid_w_per_m_k", Range.POSITIVE);
    double solidC = in.number("heat_capacity_solid_j_per_kg_k", Range.POSITIVE);
    double liquidC = in.number("heat_capacity_liquid_j_per_kg_k", Range.POSITIVE);
    double density = in.number("density_kg_per_m3", Range.POSITIVE);
    try {
      return new Melting(from, to, latent, solidC, liquidC, solidK, liquidK, density);
    } catch (OutOfRange e) {
      throw in.refuse(e);
    }
  }
}

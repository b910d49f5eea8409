package pourwright.heat;

import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * A substance that melts over a range: enthalpy as a piecewise linear function of temperature
 * (solid, mushy with the latent heat and the mean heat capacity, liquid), conductivity linear in
 * the liquid fraction, enhanced in the liquid across and upright.
 *
 * <p>Source: enthalpy method after Voller, Swaminathan and Thomas, IJNME 30 (1990) 875; the curve
 * is written down in docs/models/heat.md. One density for solid and liquid: expansion on melting is
 * neglected.
 *
 * @param fromC start of melting, °C
 * @param toC end of melting, °C; equal to {@code fromC} for a sharp melting point
 * @param latent J/kg, greater than zero
 * @param heatSolid J/(kg·K)
 * @param heatLiquid J/(kg·K)
 * @param solid W/(m·K), conductivity of the solid
 * @param liquid W/(m·K), conductivity of the liquid at rest
 * @param density kg/m³
 */
public record Melting(
    double fromC,
    double toC,
    double latent,
    double heatSolid,
    double heatLiquid,
    double solid,
    double liquid,
    double density) {

  /** Checks every range. */
  public Melting {
    Check.finite("melt_from_c", fromC);
    Check.finite("melt_to_c", toC);
    if (toC < fromC) {
      throw new OutOfRange(
          "melt_to_c", "melting would end below its start", "give melt_to_c from melt_from_c up");
    }
    Check.positive("latent_j_per_kg", latent);
    Check.positive("heat_capacity_solid_j_per_kg_k", heatSolid);
    Check.positive("heat_capacity_liquid_j_per_kg_k", heatLiquid);
    Check.positive("conductivity_solid_w_per_m_k", solid);
    Check.positive("conductivity_liquid_w_per_m_k", liquid);
    Check.positive("density_kg_per_m3", density);
  }

  /** The curve with temperatures counted from {@code referenceC}, at which enthalpy is zero. */
  public Curve from(double referenceC) {
    double start = density * heatSolid * (fromC - referenceC);
    double end = start + density * (latent + 0.5 * (heatSolid + heatLiquid) * (toC - fromC));
    return new Curve(this, referenceC, start, end);
  }

  /**
   * Enthalpy curve relative to a reference temperature.
   *
   * @param startJ enthalpy at the start of melting, J/m³
   * @param endJ enthalpy at the end of melting, J/m³
   */
  public record Curve(Melting of, double referenceC, double startJ, double endJ) {

    /** Temperature above the reference, K, of a volumetric enthalpy in J/m³. */
    public double kelvin(double enthalpy) {
      double start = of.fromC - referenceC;
      double end = of.toC - referenceC;
      if (enthalpy <= startJ) {
        return start + (enthalpy - startJ) / (of.density * of.heatSolid);
      }
      if (enthalpy < endJ) {
        return start + (enthalpy - startJ) * (end - start) / (endJ - startJ);
      }
      return end + (enthalpy - endJ) / (of.density * of.heatLiquid);
    }

    /** Liquid fraction, 0 to 1, of a volumetric enthalpy in J/m³. */
    public double liquid(double enthalpy) {
      return Math.min(1, Math.max(0, (enthalpy - startJ) / (endJ - startJ)));
    }

    /** Volumetric enthalpy in J/m³ at a temperature in °C; solid at a sharp melting point. */
    public double enthalpy(double celsius) {
      if (celsius <= of.fromC) {
        return startJ + of.density * of.heatSolid * (celsius - of.fromC);
      }
      if (celsius < of.toC) {
        return startJ + (endJ - startJ) * (celsius - of.fromC) / (of.toC - of.fromC);
      }
      return endJ + of.density * of.heatLiquid * (celsius - of.toC);
    }

    /** Slopes of temperature over enthalpy: solid, mushy, liquid, in K·m³/J. */
    double[] slopes() {
      return new double[] {
        1 / (of.density * of.heatSolid),
        (of.toC - of.fromC) / (endJ - startJ),
        1 / (of.density * of.heatLiquid)
      };
    }
  }
}

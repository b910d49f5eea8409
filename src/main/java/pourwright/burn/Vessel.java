package pourwright.burn;

import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Solid;

/**
 * The vessel round the wax: a wall of even thickness, measured level, and a base.
 *
 * @param cavity what the wax is poured into
 * @param fillMm height of the wax above the cavity's bottom
 * @param wallMm thickness of the wall, measured level
 * @param baseMm thickness of the base
 * @param stuff what it is made of
 */
public record Vessel(Solid cavity, double fillMm, double wallMm, double baseMm, Stuff stuff) {

  /** Checks the sizes. */
  public Vessel {
    Check.positive("fill_height_mm", fillMm);
    Check.between("wall_mm", wallMm, 0.5, 100);
    Check.between("base_mm", baseMm, 0.5, 100);
    if (fillMm > cavity.heightMm()) {
      throw new OutOfRange(
          "fill_height_mm",
          "the wax would stand " + fillMm + " mm high in a cavity of " + cavity.heightMm() + " mm",
          "fill at most to the rim");
    }
  }

  /**
   * The wall's material.
   *
   * @param conductivity W/(m·K), typically 0.5 to 2.3 for cast mixes
   * @param density kg/m³
   * @param heatCapacity J/(kg·K)
   * @param emissivity 0 to 1; concrete 0.92
   */
  public record Stuff(double conductivity, double density, double heatCapacity, double emissivity) {

    /** Checks the ranges. */
    public Stuff {
      Check.between("conductivity_w_per_m_k", conductivity, 0.01, 400);
      Check.between("density_kg_per_m3", density, 50, 10_000);
      Check.between("heat_capacity_j_per_kg_k", heatCapacity, 50, 10_000);
      Check.fraction("emissivity", emissivity);
    }
  }
}

package pourwright.cast;

import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * Parts of powder to parts of water.
 *
 * @param by whether the parts are weighed or scooped
 * @param powder greater than zero
 * @param water greater than zero
 */
public record Ratio(By by, double powder, double water) {

  /** How the parts are measured. */
  public enum By {
    /** Weighed. */
    MASS,
    /** Scooped and poured. */
    VOLUME
  }

  /** Checks both parts. */
  public Ratio {
    Check.positive("powder", powder);
    Check.positive("water", water);
  }

  /**
   * Mass of water to a mass of one of powder.
   *
   * <p>By volume: {@code w/p = ρw/(n·ρb)} with n volumes of powder to one of water.
   */
  public double waterToPowder(Powder material, double waterGPerMl) {
    if (by == By.MASS) {
      return water / powder;
    }
    Double bulk = material.bulkGPerMl();
    if (bulk == null) {
      throw new OutOfRange(
          "bulk_density_g_per_ml",
          "a ratio by volume needs the powder's bulk density",
          "weigh a level scoop of known volume, five times");
    }
    return water * waterGPerMl / (powder * bulk);
  }
}

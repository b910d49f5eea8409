package pourwright.pour;

import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * What the stone takes: the temperature at which hot wax and a cooler vessel meet when nothing is
 * lost to the room, {@code T = (m_w c_w T_w + m_v c_v T_v)/(m_w c_w + m_v c_v)}. The whole wall is
 * counted; in the first minute only its inside takes part, so the real wax is a little warmer at
 * first and a little cooler later. Maths: docs/models/pour.md 5.
 *
 * @param waxG wax in the vessel
 * @param waxJPerKgK heat capacity of the liquid wax (typical 2200)
 * @param vesselG the empty vessel
 * @param vesselJPerKgK its heat capacity (typical 880)
 */
public record VesselWarming(double waxG, double waxJPerKgK, double vesselG, double vesselJPerKgK) {
  /** Vessels are warmed to this at most, °C. House: 30 to 40. */
  public static final double WARM_MOST_C = 40;

  /** Checks the ranges. */
  public VesselWarming {
    Check.positive("wax_g", waxG);
    Check.positive("vessel_g", vesselG);
    Check.between("wax_j_per_kg_k", waxJPerKgK, 500, 5000);
    Check.between("vessel_j_per_kg_k", vesselJPerKgK, 200, 4500);
  }

  private double waxShare() {
    return waxG * waxJPerKgK / (waxG * waxJPerKgK + vesselG * vesselJPerKgK);
  }

  /** Temperature after mixing, °C. */
  public double afterC(double waxC, double vesselC) {
    return waxShare() * waxC + (1 - waxShare()) * vesselC;
  }

  /** How warm the vessel must be for a wanted temperature after mixing, °C. */
  public double vesselForC(double waxC, double wantedC) {
    return (wantedC - waxShare() * waxC) / (1 - waxShare());
  }

  /** What the maker should know of a pour, or null. */
  public @Nullable String warning(double waxC, double vesselC, double meltFromC) {
    Check.between("vessel_c", vesselC, -20, 150);
    if (waxC < vesselC) {
      throw new OutOfRange("vessel_c", "the vessel is warmer than the wax", "check the readings");
    }
    return afterC(waxC, vesselC) < meltFromC
        ? "The stone takes the wax below its melting range at once: expect frosting and wet spots."
            + " Warm the vessel (house: 30 to 40 °C, under the limits of sealer and binder)."
        : null;
  }
}

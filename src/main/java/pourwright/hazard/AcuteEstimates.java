package pourwright.hazard;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;

/**
 * Acute toxicity estimates of a substance; null where the sheet has none. A value at or above the
 * upper bound of a limit test (5,000 mg/kg; 20 mg/l vapour is within category 4) counts as tested
 * without effect.
 *
 * @param oralMgPerKg greater than 0
 * @param dermalMgPerKg greater than 0
 * @param vapourMgPerL inhalation as a vapour, greater than 0
 * @param dustMistMgPerL inhalation as dust or mist, greater than 0
 */
public record AcuteEstimates(
    @Nullable Double oralMgPerKg,
    @Nullable Double dermalMgPerKg,
    @Nullable Double vapourMgPerL,
    @Nullable Double dustMistMgPerL) {
  /** None known. */
  public static final AcuteEstimates NONE = new AcuteEstimates(null, null, null, null);

  /** Checks that what is given is positive. */
  public AcuteEstimates {
    positive("oral_mg_per_kg", oralMgPerKg);
    positive("dermal_mg_per_kg", dermalMgPerKg);
    positive("inhalation_vapour_mg_per_l", vapourMgPerL);
    positive("inhalation_dust_mist_mg_per_l", dustMistMgPerL);
  }

  private static void positive(String field, @Nullable Double value) {
    if (value != null) {
      Check.positive(field, value);
    }
  }

  /** The value for a way of exposure, or null. */
  @Nullable Double of(Exposure exposure) {
    return switch (exposure) {
      case ORAL -> oralMgPerKg;
      case DERMAL -> dermalMgPerKg;
      case VAPOUR -> vapourMgPerL;
      case DUST_MIST -> dustMistMgPerL;
    };
  }

  /** True when a value for the route is given, inhalation in either form. */
  boolean knows(String route) {
    for (Exposure exposure : Exposure.values()) {
      if (exposure.route().equals(route) && of(exposure) != null) {
        return true;
      }
    }
    return false;
  }

  /** Routes without any value. */
  public List<String> missingRoutes() {
    return List.of("oral", "dermal", "inhalation").stream().filter(route -> !knows(route)).toList();
  }

  /** The smaller of each pair. */
  AcuteEstimates stricter(AcuteEstimates other) {
    return new AcuteEstimates(
        smaller(oralMgPerKg, other.oralMgPerKg),
        smaller(dermalMgPerKg, other.dermalMgPerKg),
        smaller(vapourMgPerL, other.vapourMgPerL),
        smaller(dustMistMgPerL, other.dustMistMgPerL));
  }

  private static @Nullable Double smaller(@Nullable Double a, @Nullable Double b) {
    if (a == null || b == null) {
      return a == null ? b : a;
    }
    return Math.min(a, b);
  }
}

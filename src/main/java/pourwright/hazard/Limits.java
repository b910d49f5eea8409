package pourwright.hazard;

import java.util.OptionalDouble;

/** Limits of one substance: the specific limit of its sheet before the generic one. */
final class Limits {
  /** Sums of decimal fractions miss their limit by a hair; this is the hair. */
  static final double HAIR = 1e-9;

  private Limits() {}

  /** True when {@code value} reaches {@code limit}, but for a rounding hair. */
  static boolean reached(double value, double limit) {
    return value >= limit * (1 - HAIR);
  }

  /** The sheet's own limit for a class at its level, the lowest where it gives several. */
  static OptionalDouble specific(Ingredient substance, HazardClass hazardClass) {
    return substance.specificLimits().entrySet().stream()
        .filter(e -> e.getKey().sameLevel(hazardClass))
        .mapToDouble(java.util.Map.Entry::getValue)
        .min();
  }
}

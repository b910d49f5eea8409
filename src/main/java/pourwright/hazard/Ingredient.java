package pourwright.hazard;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * One line of a composition: a substance, how much of it, and what its sheet says of it.
 *
 * @param name as on the sheet, never blank
 * @param cas its registry number, or null
 * @param share fraction of the mixture by mass
 * @param classes its hazard classes; empty means looked at and none found
 * @param specificLimits specific concentration limits by class, fractions above 0
 * @param acuteM M-factor for Aquatic Acute 1, a power of ten from 1; null when the sheet has none
 * @param chronicM M-factor for Aquatic Chronic 1, likewise
 * @param acute what is known of its acute toxicity
 */
public record Ingredient(
    String name,
    @Nullable CasNumber cas,
    Share share,
    Set<HazardClass> classes,
    Map<HazardClass, Double> specificLimits,
    @Nullable Integer acuteM,
    @Nullable Integer chronicM,
    AcuteFacts acute) {

  /**
   * What a sheet says about acute toxicity and about the way corrosion adds up.
   *
   * @param estimates the values
   * @param unknownRoutes {@code oral}, {@code dermal}, {@code inhalation}: routes without any data
   * @param additive false for acids, bases and the like whose corrosion does not simply add up
   */
  public record AcuteFacts(AcuteEstimates estimates, Set<String> unknownRoutes, boolean additive) {
    /** Looked at, nothing found, and plain addition holds. */
    public static final AcuteFacts PLAIN = new AcuteFacts(AcuteEstimates.NONE, Set.of(), true);

    /** Copies the set. */
    public AcuteFacts {
      unknownRoutes = Set.copyOf(unknownRoutes);
    }

    /** True when at least one value is given. */
    boolean estimatesGiven() {
      return !estimates.equals(AcuteEstimates.NONE);
    }
  }

  /** Checks the numbers and copies the collections. */
  public Ingredient {
    if (name.isBlank()) {
      throw new OutOfRange("name", "a line has no name", "write the substance's name");
    }
    classes = Set.copyOf(classes);
    specificLimits = Map.copyOf(specificLimits);
    specificLimits
        .values()
        .forEach(
            limit -> {
              Check.positive("specific_limits", limit);
              Check.fraction("specific_limits", limit);
            });
    powerOfTen("m_acute", acuteM);
    powerOfTen("m_chronic", chronicM);
  }

  /** A line with classes and nothing else. */
  public static Ingredient plain(String name, double fraction, String... classes) {
    java.util.LinkedHashSet<HazardClass> read = new java.util.LinkedHashSet<>();
    for (String written : classes) {
      read.add(HazardClass.parse(written));
    }
    return new Ingredient(
        name, null, Share.of(fraction), read, Map.of(), null, null, AcuteFacts.PLAIN);
  }

  /** The same line at another share. */
  public Ingredient at(Share other) {
    return new Ingredient(name, cas, other, classes, specificLimits, acuteM, chronicM, acute);
  }

  private static void powerOfTen(String field, @Nullable Integer value) {
    if (value == null) {
      return;
    }
    int rest = value;
    while (rest >= 10 && rest % 10 == 0) {
      rest /= 10;
    }
    if (rest != 1) {
      throw new OutOfRange(
          field, field + " is " + value + " and M-factors are powers of ten", "use 1, 10, 100 …");
    }
  }
}

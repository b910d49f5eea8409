package pourwright.hazard;

import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;

/**
 * A mixture to be classified.
 *
 * @param regime the rules
 * @param form as supplied
 * @param audience who gets it
 * @param ingredients at least one line; the lower ends together at most 1
 * @param tested what was measured on the mixture itself
 */
public record Mixture(
    Regime regime, Form form, Audience audience, List<Ingredient> ingredients, Tested tested) {

  /**
   * Measured properties of the whole mixture; null where not measured.
   *
   * @param flashPointC closed cup, °C
   * @param boilingPointC where boiling begins, °C
   * @param viscosityMm2PerS kinematic, at 40 °C
   * @param ph of the mixture
   */
  public record Tested(
      @Nullable Double flashPointC,
      @Nullable Double boilingPointC,
      @Nullable Double viscosityMm2PerS,
      @Nullable Double ph) {
    /** Nothing measured. */
    public static final Tested NOTHING = new Tested(null, null, null, null);
  }

  /** Refuses a mixture that has no lines or more than a whole. */
  public Mixture {
    ingredients = List.copyOf(ingredients);
    if (ingredients.isEmpty()) {
      throw new OutOfRange("ingredients", "there are no ingredients", "add at least one line");
    }
    double least = ingredients.stream().mapToDouble(i -> i.share().low()).sum();
    if (least > 1 + 1e-6) {
      throw new OutOfRange(
          "ingredients",
          "the fractions add up to " + Percent.text(least) + ", which is more than the whole",
          "check the lines and their unit: 8 % is written 0.08");
    }
  }

  /** The same lines under other rules. */
  public Mixture under(Regime other) {
    return new Mixture(other, form, audience, ingredients, tested);
  }
}

package pourwright.pour;

import java.util.Locale;

/**
 * The one rule about flash points. House, never law: wax is heated to at most 30 K under the lowest
 * flash point in the pot; when the scent goes in the wax's own window rules, but within 10 K of the
 * oil's flash point the heat is off, no flame is near and the fan is on, and above it the maker
 * writes down why.
 */
public final class FlashRule {
  /** Distance kept while heating, in kelvin. House. */
  public static final double HEATING_K = 30;

  /** Distance that asks for care while adding, in kelvin. House. */
  public static final double ADDING_K = 10;

  private FlashRule() {}

  /** What the rule says. */
  public enum Says {
    /** Nothing. */
    FINE,
    /** Be careful; the sentence says how. */
    CARE,
    /** Go on only with a reason that is recorded. */
    REASON_NEEDED,
    /** Turn the heat down now. */
    TOO_HOT
  }

  /** The answer with its sentence, empty when all is well. */
  public record Answer(Says says, String sentence) {}

  /** Before the scent is in: heating wax. */
  public static Answer heating(double waxC, double lowestFlashC) {
    double most = lowestFlashC - HEATING_K;
    if (waxC <= most) {
      return new Answer(Says.FINE, "");
    }
    return new Answer(
        Says.TOO_HOT,
        String.format(
            Locale.ROOT,
            "Heat down: %.0f °C is above %.0f °C, 30 K under the lowest flash point in the pot"
                + " (house).",
            waxC,
            most));
  }

  /** While the scent goes in. */
  public static Answer adding(double waxC, double oilFlashC) {
    if (waxC > oilFlashC) {
      return new Answer(
          Says.REASON_NEEDED,
          String.format(
              Locale.ROOT,
              "The wax is above the oil's flash point (%.0f °C). Let it cool, or write down why not.",
              oilFlashC));
    }
    if (waxC > oilFlashC - ADDING_K) {
      return new Answer(
          Says.CARE,
          String.format(
              Locale.ROOT,
              "Within 10 K of the oil's flash point (%.0f °C): heat off, no flame or spark, fan on.",
              oilFlashC));
    }
    return new Answer(Says.FINE, "");
  }
}

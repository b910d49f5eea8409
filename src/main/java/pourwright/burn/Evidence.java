package pourwright.burn;

import java.util.Locale;
import org.hipparchus.special.Beta;
import pourwright.quantity.Check;

/**
 * What a count of passed tests proves, said honestly.
 *
 * <p>Source: C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404: the exact one-sided bound
 * of a binomial share is a quantile of the beta distribution.
 */
public final class Evidence {
  /** One-sided confidence that is used throughout. */
  public static final double CONFIDENCE = 0.95;

  private Evidence() {}

  /**
   * Largest share of failures that the tests do not yet rule out.
   *
   * @param passed 0 to {@code tested}
   * @param tested 1 or more
   * @return one-sided upper bound of the share that could fail, 0 to 1
   */
  public static double couldFail(int passed, int tested) {
    Check.between("tested", tested, 1, 1_000_000);
    Check.between("passed", passed, 0, tested);
    int failed = tested - passed;
    if (passed == 0) {
      return 1;
    }
    double low = 0;
    double high = 1;
    for (int i = 0; i < 100; i++) {
      double middle = 0.5 * (low + high);
      double below = Beta.regularizedBeta(middle, failed + 1, passed);
      if (below < CONFIDENCE) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  /** The same as a sentence for people. */
  public static String sentence(int passed, int tested) {
    return String.format(
        Locale.ROOT,
        "%d of %d passed: up to %.0f %% of such candles could still fail"
            + " (one-sided 95 %%, exact binomial)",
        passed,
        tested,
        100 * couldFail(passed, tested));
  }
}

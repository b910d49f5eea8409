package pourwright.label;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Verdict over the net contents of a lot by sample: the average requirement and the largest
 * shortfall of single packages. Wax, fragrance and wick count; vessel, lid and wick tab do not.
 *
 * @param averageErrorG mean of net less label, g
 * @param standardDeviationG of the errors, with n − 1; null for a single package
 * @param errorLimitG how far the mean may lie below the label, g; null for a single package
 * @param individualAllowanceG how far a single package may lie below the label, g
 * @param beyondAllowance packages that lie below by more than that
 * @param verdict null when the sample is too small for a pass
 * @param reasons in words, with the rule
 * @param warnings what weakens the verdict
 */
public record NetContents(
    double averageErrorG,
    @Nullable Double standardDeviationG,
    @Nullable Double errorLimitG,
    double individualAllowanceG,
    int beyondAllowance,
    @Nullable Verdict verdict,
    List<String> reasons,
    List<String> warnings) {

  /** What the lot is. */
  public enum Verdict {
    /** Both requirements are met. */
    PASS("pass"),
    /** The mean lies too far below the label. */
    FAIL_AVERAGE("fail_average"),
    /** Too many single packages lie too far below the label. */
    FAIL_INDIVIDUAL("fail_individual");

    private final String code;

    Verdict(String code) {
      this.code = code;
    }

    /** The word used in headless documents. */
    public String code() {
      return code;
    }
  }

  /** Copies the lists. */
  public NetContents {
    reasons = List.copyOf(reasons);
    warnings = List.copyOf(warnings);
  }
}

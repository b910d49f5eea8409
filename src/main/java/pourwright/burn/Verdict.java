package pourwright.burn;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a burn test says under a set of rules, with every reason.
 *
 * @param outcome what it comes to
 * @param findings what decided: all that fail, else all that are missing, else the nearest reading
 *     to each limit
 */
public record Verdict(Outcome outcome, List<Finding> findings) {

  /** Copies the list. */
  public Verdict {
    findings = List.copyOf(findings);
  }

  /** What a test comes to. */
  public enum Outcome {
    /** Every limit kept, with enough readings, to the end of every life. */
    PASS,
    /** At least one limit was broken. */
    FAIL,
    /** No limit was broken, but something needed is missing. */
    NOT_ENOUGH_EVIDENCE;

    /** As written in headless documents. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /**
   * One reason.
   *
   * @param rule short name of the limit
   * @param reading the value that decided, or null when it is missing
   * @param limit the limit in the reading's unit, or null where it is no number
   * @param source where the limit comes from
   * @param where sample, cycle and minute in words
   * @param sentence the reason in words
   */
  public record Finding(
      String rule,
      @Nullable Double reading,
      @Nullable Double limit,
      String source,
      String where,
      String sentence) {}
}

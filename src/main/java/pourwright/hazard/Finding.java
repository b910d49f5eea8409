package pourwright.hazard;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Why a class was given or not: which substances, which sum, which limit, how far from the next
 * class.
 *
 * @param endpoint what was judged, for example {@code aquatic chronic}
 * @param result the class given, or null
 * @param parts the substances that counted
 * @param sum the weighted sum as a fraction, or the estimate for acute toxicity
 * @param limit what the sum is held against
 * @param distance how far the next stricter class is, in words; empty when there is none
 * @param rule where the limit stands
 * @param sentence the whole in words
 */
public record Finding(
    String endpoint,
    @Nullable HazardClass result,
    List<Part> parts,
    double sum,
    double limit,
    String distance,
    Rule rule,
    String sentence) {

  /**
   * A substance in a finding.
   *
   * @param name as on the sheet
   * @param fraction its share, the upper end where a range is known
   * @param limit the limit that held for it alone
   */
  public record Part(String name, double fraction, double limit) {}

  /**
   * Where a limit stands and how sure the figure is.
   *
   * @param clause article, table or paragraph
   * @param source the text
   * @param confidence how the figure was checked
   */
  public record Rule(String clause, String source, String confidence) {}

  /** Copies the list. */
  public Finding {
    parts = List.copyOf(parts);
  }
}

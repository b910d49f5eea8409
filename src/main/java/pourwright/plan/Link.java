package pourwright.plan;

import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;

/**
 * Order of two steps: {@code after} starts at least {@code minMin} and, where stated, at most
 * {@code maxMin} minutes after {@code before} ends. Pot life, demold not too late, recoat window
 * and wax temperature window are the ones with a maximum. May be negative for what overlaps.
 *
 * @param before key of the earlier step
 * @param after key of the later step
 * @param minMin least minutes from the end of {@code before} to the start of {@code after}
 * @param maxMin most minutes, null where there is no limit
 * @param reason the rule in the trade's words, e.g. {@code the mix must be poured within its pot
 *     life}
 */
public record Link(
    String before, String after, int minMin, @Nullable Integer maxMin, String reason) {
  /** Checks that the two limits do not exclude each other. */
  public Link {
    if (maxMin != null && maxMin < minMin) {
      throw new OutOfRange(
          "max_min", reason + ": at most " + maxMin + " and at least " + minMin, "widen one");
    }
  }
}

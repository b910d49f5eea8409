package pourwright.work;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A measured value.
 *
 * @param id the ledger's number, 0 before it is written
 * @param subject what was measured
 * @param quantity name and unit as the headless contract writes them: {@code wax_c}, {@code mass_g}
 * @param value finite
 * @param takenAt when it was read
 * @param instrument code of the instrument's card, if known
 * @param note what was said about it
 * @param deed the deed, 0 before it is written
 */
public record Reading(
    long id,
    Subject subject,
    String quantity,
    double value,
    Instant takenAt,
    @Nullable String instrument,
    String note,
    long deed) {

  /** A reading yet to be written down. */
  public static Reading fresh(Subject subject, String quantity, double value, Instant takenAt) {
    return new Reading(0, subject, quantity, value, takenAt, null, "", 0);
  }
}

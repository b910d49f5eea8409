package pourwright.work;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A timer: an absolute deadline that outlives page, phone and program.
 *
 * @param id the ledger's number
 * @param label what it is for
 * @param subject what it belongs to
 * @param startedAt when it was set
 * @param dueAt when it rings
 * @param by initials of who set it
 * @param answeredAt when it was answered, if it was
 * @param answeredBy by whom
 * @param deed the deed that set it
 */
public record Timer(
    long id,
    String label,
    Subject subject,
    Instant startedAt,
    Instant dueAt,
    String by,
    @Nullable Instant answeredAt,
    @Nullable String answeredBy,
    long deed) {

  /** True when it is due and nobody answered. */
  public boolean rings(Instant now) {
    return answeredAt == null && !dueAt.isAfter(now);
  }
}

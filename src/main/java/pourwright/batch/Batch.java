package pourwright.batch;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A cast or pour: planned, being worked on, or finished.
 *
 * @param id the ledger's number, from 1
 * @param mark the mark on its tray card or pitcher
 * @param plan what was planned
 * @param startedAt when work began
 * @param finishedAt when it was closed, if it was
 * @param by initials of who began it
 * @param deed the deed that began it
 */
public record Batch(
    long id,
    Mark mark,
    BatchPlan plan,
    Instant startedAt,
    @Nullable Instant finishedAt,
    String by,
    long deed) {

  /** True while work goes on. */
  public boolean isRunning() {
    return finishedAt == null;
  }
}

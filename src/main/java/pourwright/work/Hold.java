package pourwright.work;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A stop on a lot, a design or a mark: nothing under it is drawn, picked, labelled or promised.
 *
 * @param id the ledger's number
 * @param subject a lot, a card or a piece
 * @param reason why
 * @param placedAt since when
 * @param placedBy by whom
 * @param liftedAt when it was lifted, if it was
 * @param liftedBy the name of who answers for lifting it
 * @param liftReason why it was lifted
 * @param deed the deed that placed it
 */
public record Hold(
    long id,
    Subject subject,
    String reason,
    Instant placedAt,
    String placedBy,
    @Nullable Instant liftedAt,
    @Nullable String liftedBy,
    @Nullable String liftReason,
    long deed) {

  /** True while it stands. */
  public boolean stands() {
    return liftedAt == null;
  }
}

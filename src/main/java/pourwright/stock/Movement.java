package pourwright.stock;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One line of the ledger: an amount into a lot (positive) or out of it (negative). Never edited; a
 * mistake is corrected by a further line.
 *
 * @param id the ledger's number, from 1, in the order of writing
 * @param lot the lot's number
 * @param change how much, signed, not zero
 * @param cause why
 * @param batch the batch it went into or came back from, if any
 * @param reverses the movement that this one takes back, if it does
 * @param at when it was acknowledged
 * @param deed the deed it belongs to
 */
public record Movement(
    long id,
    long lot,
    Amount change,
    Cause cause,
    @Nullable Long batch,
    @Nullable Long reverses,
    Instant at,
    long deed) {

  /** Checks that something moves. */
  public Movement {
    if (change.isNone()) {
      throw new IllegalArgumentException("a movement of nothing");
    }
  }
}

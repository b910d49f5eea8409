package pourwright.batch;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.stock.Amount;

/**
 * A step as it was really done.
 *
 * @param id the ledger's number
 * @param batch the batch's number
 * @param key the planned step's key, or one of the maker's own
 * @param used amounts by lot; lot is null for what the ledger did not have
 * @param temperatureC reading taken in it, if any
 * @param note what was said about it
 * @param at when
 * @param by initials
 * @param deed the deed
 */
public record RecordedStep(
    long id,
    long batch,
    String key,
    List<Used> used,
    @Nullable Double temperatureC,
    String note,
    Instant at,
    String by,
    long deed) {

  /** Keeps its own copy. */
  public RecordedStep {
    used = List.copyOf(used);
  }

  /** What went in: a material, the lot it came from, how much. */
  public record Used(String material, @Nullable Long lot, Amount amount) {}
}

package pourwright.work;

import java.time.Instant;
import java.util.Optional;

/** What is typed and not kept yet; written over and thrown away, never part of the ledger. */
public interface DraftBook {
  /** What stands of a form on a device. */
  Optional<Draft> draft(String device, String form);

  /** Writes one, over an earlier one of the same form. Only inside a write. */
  void put(Draft draft);

  /** Throws one away. Only inside a write. */
  void drop(String device, String form);

  /**
   * Throws away what is older than this, and of this draft's device all but it and the newest so
   * many others. Only inside a write.
   */
  void tidy(Instant before, Draft stays, int others);
}

package pourwright.store;

import java.util.List;
import org.jdbi.v3.core.Handle;

/**
 * What is not ended yet, kept so that no page reads the whole history for it: batches not finished,
 * timers not answered, cycles that burn. Worked out from the facts of deeds that count.
 */
enum StillOpen {
  /** Batches not finished. */
  BATCH("batch", "batch_finish", "batch_id"),
  /** Timers not answered. */
  TIMER("timer", "timer_answer", "timer_id"),
  /** Burns not put out. */
  CYCLE("burn_cycle", "burn_cycle_end", "cycle_id");

  private final String begun;
  private final String ended;
  private final String key;

  StillOpen(String begun, String ended, String key) {
    this.begun = begun;
    this.ended = ended;
    this.key = key;
  }

  /** SQL for the numbers of what is still open. */
  String ids() {
    return " (SELECT o.id FROM still_open o WHERE o.kind = '" + name() + "') ";
  }

  /** SQL for the same, worked out anew from the facts. */
  private String told() {
    return "SELECT b.id FROM "
        + begun
        + " b WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = b.deed_id)"
        + " AND NOT EXISTS (SELECT 1 FROM "
        + ended
        + " f WHERE f."
        + key
        + " = b.id AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = f.deed_id))";
  }

  /** Works one out anew. */
  void retell(Handle handle, long id) {
    handle
        .createUpdate("DELETE FROM still_open WHERE kind = :kind AND id = :id")
        .bind("kind", name())
        .bind("id", id)
        .execute();
    handle
        .createUpdate(
            "INSERT INTO still_open (kind, id) SELECT '"
                + name()
                + "', t.id FROM ("
                + told()
                + " AND b.id = :id) t")
        .bind("id", id)
        .execute();
  }

  /** Works out anew what a deed began or ended; for when it no longer counts, or does again. */
  static void retellOf(Handle handle, long deed) {
    for (StillOpen kind : values()) {
      List<Long> ids =
          handle
              .createQuery(
                  "SELECT id FROM "
                      + kind.begun
                      + " WHERE deed_id = :deed UNION SELECT "
                      + kind.key
                      + " FROM "
                      + kind.ended
                      + " WHERE deed_id = :deed")
              .bind("deed", deed)
              .mapTo(Long.class)
              .list();
      ids.forEach(id -> kind.retell(handle, id));
    }
  }

  /** How many rows are missing or too many. */
  static long wrong(Handle handle) {
    long wrong = 0;
    for (StillOpen kind : values()) {
      List<Long> should = handle.createQuery(kind.told()).mapTo(Long.class).list();
      List<Long> are =
          handle
              .createQuery("SELECT id FROM still_open WHERE kind = :kind")
              .bind("kind", kind.name())
              .mapTo(Long.class)
              .list();
      java.util.Set<Long> odd = new java.util.TreeSet<>(should);
      are.stream().filter(id -> !odd.remove(id)).forEach(id -> odd.add(id));
      wrong += odd.size();
    }
    return wrong;
  }

  /** Works all out anew. */
  static void rebuild(Handle handle) {
    handle.execute("DELETE FROM still_open");
    for (StillOpen kind : values()) {
      handle.execute(
          "INSERT INTO still_open (kind, id) SELECT '"
              + kind.name()
              + "', t.id FROM ("
              + kind.told()
              + ") t");
    }
  }
}

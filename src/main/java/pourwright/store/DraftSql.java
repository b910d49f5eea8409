package pourwright.store;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import pourwright.work.Draft;
import pourwright.work.DraftBook;

/** Drafts in SQL. */
final class DraftSql implements DraftBook {
  private final Handle handle;

  DraftSql(Handle handle) {
    this.handle = handle;
  }

  @Override
  public Optional<Draft> draft(String device, String form) {
    return handle
        .createQuery("SELECT * FROM draft WHERE device = :device AND form = :form")
        .bind("device", device)
        .bind("form", form)
        .map(
            (row, ctx) ->
                new Draft(
                    row.getString("device"),
                    row.getString("form"),
                    row.getString("request_key"),
                    row.getString("typed"),
                    Instant.ofEpochMilli(row.getLong("at_ms"))))
        .findOne();
  }

  @Override
  public void put(Draft draft) {
    handle
        .createUpdate(
            """
            INSERT INTO draft (device, form, request_key, typed, at_ms)
            VALUES (:device, :form, :key, :typed, :at)
            ON CONFLICT (device, form) DO UPDATE SET request_key = :key, typed = :typed, at_ms = :at
            """)
        .bind("device", draft.device())
        .bind("form", draft.form())
        .bind("key", draft.requestKey())
        .bind("typed", draft.typed())
        .bind("at", draft.at().toEpochMilli())
        .execute();
  }

  @Override
  public void drop(String device, String form) {
    handle
        .createUpdate("DELETE FROM draft WHERE device = :device AND form = :form")
        .bind("device", device)
        .bind("form", form)
        .execute();
  }

  @Override
  public void tidy(Instant before, Draft stays, int others) {
    handle
        .createUpdate("DELETE FROM draft WHERE at_ms < :before")
        .bind("before", before.toEpochMilli())
        .execute();
    handle
        .createUpdate(
            """
            DELETE FROM draft WHERE device = :device AND form <> :form AND form NOT IN (
              SELECT form FROM draft WHERE device = :device AND form <> :form
              ORDER BY at_ms DESC, form LIMIT :others)
            """)
        .bind("device", stays.device())
        .bind("form", stays.form())
        .bind("others", others)
        .execute();
  }
}

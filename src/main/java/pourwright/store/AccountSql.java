package pourwright.store;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceStep;
import pourwright.work.AccountBook;

/** The years at once, in one statement each. */
record AccountSql(Handle handle) implements AccountBook {
  private static final String COUNTS =
      " NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = %s.deed_id) ";

  private static String counts(String alias) {
    return String.format(java.util.Locale.ROOT, COUNTS, alias);
  }

  @Override
  public List<String> materials() {
    return handle
        .createQuery("SELECT DISTINCT material FROM lot ORDER BY material")
        .mapTo(String.class)
        .list();
  }

  @Override
  public List<Made> pieces() {
    return handle
        .createQuery(
            """
            SELECT p.id, p.mark, p.vessel_design, p.made_in, p.refill_of FROM piece p
            JOIN piece_now w ON w.piece_id = p.id ORDER BY p.id
            """)
        .map(
            (row, ctx) ->
                new Made(
                    row.getLong("id"),
                    row.getLong("mark"),
                    row.getString("vessel_design"),
                    row.getLong("made_in"),
                    Row.longOrNull(row, "refill_of")))
        .list();
  }

  @Override
  public List<PieceEvent> passages() {
    return handle
        .createQuery(
            """
            SELECT e.* FROM piece_event e
            WHERE e.step IN (<steps>) AND
            """
                + counts("e")
                + "ORDER BY e.id")
        .bindList(
            "steps",
            List.of(
                PieceStep.POURED.name(),
                PieceStep.PICKED.name(),
                PieceStep.UNPICKED.name(),
                PieceStep.TESTED.name(),
                PieceStep.SOLD.name(),
                PieceStep.GIVEN.name(),
                PieceStep.CAME_BACK.name(),
                PieceStep.REFILLED.name(),
                PieceStep.SCRAPPED.name()))
        .map(
            (row, ctx) ->
                new PieceEvent(
                    row.getLong("id"),
                    row.getLong("piece_id"),
                    PieceStep.valueOf(row.getString("step")),
                    Row.at(row, "at_ms"),
                    Row.longOrNull(row, "batch_id"),
                    Row.longOrNull(row, "order_line_id"),
                    null,
                    row.getString("design"),
                    row.getLong("deed_id")))
        .list();
  }

  @Override
  public Map<Long, LineOf> lines() {
    Map<Long, LineOf> lines = new TreeMap<>();
    handle
        .createQuery(
            """
            SELECT l.id, l.order_number, l.design, COALESCE(o.channel, '') AS channel
            FROM order_line l LEFT JOIN order_now o ON o.order_number = l.order_number
            """)
        .map(
            (row, ctx) ->
                Map.entry(
                    row.getLong("id"),
                    new LineOf(
                        row.getString("order_number"),
                        row.getString("design"),
                        row.getString("channel"))))
        .forEach(e -> lines.put(e.getKey(), e.getValue()));
    return lines;
  }

  @Override
  public Map<Long, Instant> finished() {
    Map<Long, Instant> finished = new TreeMap<>();
    handle
        .createQuery(
            "SELECT f.batch_id, d.at_ms FROM batch_finish f JOIN deed d ON d.id = f.deed_id WHERE"
                + counts("f"))
        .map((row, ctx) -> Map.entry(row.getLong("batch_id"), Row.at(row, "at_ms")))
        .forEach(e -> finished.put(e.getKey(), e.getValue()));
    return finished;
  }

  @Override
  public List<Had> had(String prefix) {
    return handle
        .createQuery(
            "SELECT s.key, s.value, s.deed_id FROM setting s WHERE s.key >= :from AND s.key < :to"
                + " AND"
                + counts("s")
                + "ORDER BY s.deed_id")
        .bind("from", prefix)
        .bind("to", prefix + "\uffff")
        .map(
            (row, ctx) ->
                new Had(row.getString("key"), row.getString("value"), row.getLong("deed_id")))
        .list();
  }
}

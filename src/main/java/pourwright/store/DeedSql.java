package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.work.Act;
import pourwright.work.Deed;
import pourwright.work.DeedBook;
import pourwright.work.PageOf;
import pourwright.work.Subject;

/** Deeds in SQL. */
final class DeedSql implements DeedBook {
  private static final String SELECT =
      """
      SELECT d.*, EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = d.id) AS is_undone
      FROM deed d
      """;

  private final Handle handle;

  DeedSql(Handle handle) {
    this.handle = handle;
  }

  private static Deed map(ResultSet row) throws SQLException {
    return new Deed(
        row.getLong("id"),
        Row.at(row, "at_ms"),
        row.getString("by_whom"),
        row.getString("verb"),
        new Subject(
            Subject.Kind.valueOf(row.getString("subject_kind")), row.getString("subject_id")),
        row.getString("request_key"),
        Row.longOrNull(row, "undoes"),
        row.getString("note"),
        row.getBoolean("is_undone"));
  }

  @Override
  public Optional<Deed> deed(long id) {
    return handle
        .createQuery(SELECT + "WHERE d.id = :id")
        .bind("id", id)
        .map((row, ctx) -> map(row))
        .findOne();
  }

  @Override
  public Optional<Deed> ofRequest(String requestKey) {
    return handle
        .createQuery(SELECT + "WHERE d.request_key = :key")
        .bind("key", requestKey)
        .map((row, ctx) -> map(row))
        .findOne();
  }

  @Override
  public PageOf<Deed> history(@Nullable String after, int limit) {
    return Keys.newestFirst(
        handle.createQuery(SELECT + "WHERE d.id < :below ORDER BY d.id DESC LIMIT :limit"),
        after,
        limit,
        (row, ctx) -> map(row),
        Deed::id);
  }

  @Override
  public List<Deed> on(Subject subject) {
    return handle
        .createQuery(
            SELECT + "WHERE d.subject_kind = :kind AND d.subject_id = :id ORDER BY d.id DESC")
        .bind("kind", subject.kind().name())
        .bind("id", subject.id())
        .map((row, ctx) -> map(row))
        .list();
  }

  @Override
  public Deed append(Act act, Instant at, String verb, Subject subject, @Nullable Long undoes) {
    long id = Ids.next(handle, "deed");
    handle
        .createUpdate(
            """
            INSERT INTO deed
              (id, at_ms, by_whom, verb, subject_kind, subject_id, request_key, undoes, note)
            VALUES (:id, :at, :by, :verb, :kind, :subject, :key, :undoes, :note)
            """)
        .bind("id", id)
        .bind("at", at.toEpochMilli())
        .bind("by", act.by())
        .bind("verb", verb)
        .bind("kind", subject.kind().name())
        .bind("subject", subject.id())
        .bind("key", act.requestKey())
        .bind("undoes", undoes)
        .bind("note", act.note())
        .execute();
    return new Deed(id, at, act.by(), verb, subject, act.requestKey(), undoes, act.note(), false);
  }

  @Override
  public void setCounting(long deed, boolean counts) {
    String sql =
        counts
            ? "DELETE FROM undone WHERE deed_id = :deed"
            : "INSERT INTO undone (deed_id) VALUES (:deed) ON CONFLICT (deed_id) DO NOTHING";
    handle.createUpdate(sql).bind("deed", deed).execute();
    StillOpen.retellOf(handle, deed);
  }

  @Override
  public List<String> standingOn(Deed deed) {
    List<String> sentences = new ArrayList<>();
    for (Dependency dependency : DEPENDENCIES) {
      handle
          .createQuery(dependency.sql())
          .bind("deed", deed.id())
          .mapTo(Long.class)
          .findFirst()
          .flatMap(this::deed)
          .ifPresent(
              later ->
                  sentences.add(dependency.what() + " (" + later.verb() + ", " + later.by() + ")"));
    }
    return sentences;
  }

  @Override
  public List<Long> lotsUsed(long deed) {
    return handle
        .createQuery(
            """
            SELECT DISTINCT m.lot_id FROM lot l JOIN movement m ON m.lot_id = l.id
            WHERE l.deed_id = :deed AND m.deed_id <> :deed AND m.reverses IS NULL
              AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = m.deed_id)
            """)
        .bind("deed", deed)
        .mapTo(Long.class)
        .list();
  }

  @Override
  public List<String> missingUnder(long deed) {
    List<String> sentences = new ArrayList<>();
    for (String[] link : FOUNDATIONS) {
      handle
          .createQuery(
              "SELECT made.deed_id FROM %s later JOIN %s made ON made.id = later.%s"
                      .formatted(link[0], link[2], link[1])
                  + " JOIN undone u ON u.deed_id = made.deed_id"
                  + " WHERE later.deed_id = :deed AND made.deed_id <> :deed"
                  // what puts an amount back stands on the deed it puts back, which is looked at
                  // itself
                  + (link[0].equals("movement") ? " AND later.reverses IS NULL" : "")
                  + " LIMIT 1")
          .bind("deed", deed)
          .mapTo(Long.class)
          .findFirst()
          .flatMap(this::deed)
          .ifPresent(
              under ->
                  sentences.add(
                      "what it stands on was taken back ("
                          + under.verb()
                          + ", "
                          + under.by()
                          + ")"));
    }
    return sentences.stream().distinct().toList();
  }

  /** Facts, the column that names what they are about, and the table where that was made. */
  private static final String[][] FOUNDATIONS = {
    {"lot_opening", "lot_id", "lot"},
    {"movement", "lot_id", "lot"},
    {"movement", "batch_id", "batch"},
    {"batch_step", "batch_id", "batch"},
    {"batch_finish", "batch_id", "batch"},
    {"batch_carry", "from_batch", "batch"},
    {"batch_carry", "to_batch", "batch"},
    {"piece", "made_in", "batch"},
    {"piece", "vessel_lot", "lot"},
    {"piece", "refill_of", "piece"},
    {"piece_event", "piece_id", "piece"},
    {"piece_event", "batch_id", "batch"},
    {"piece_event", "order_line_id", "order_line"},
    {"tray_mixed", "tray_id", "tray"},
    {"hold_lift", "hold_id", "hold"},
    {"timer_answer", "timer_id", "timer"},
    {"burn_sample", "test_id", "burn_test"},
    {"burn_cycle", "sample_id", "burn_sample"},
    {"burn_cycle_end", "cycle_id", "burn_cycle"},
    {"burn_look", "cycle_id", "burn_cycle"},
    {"burn_test_close", "test_id", "burn_test"},
    {"candle_proof", "test_id", "burn_test"},
    {"order_terms", "line_id", "order_line"},
    {"money", "line_id", "order_line"},
    {"after_sale", "piece_id", "piece"}
  };

  /** A later deed that needs what an earlier one made. */
  private record Dependency(String what, String sql) {}

  private static Dependency needs(String what, String made, String later, String key) {
    return new Dependency(
        what,
        "SELECT later.deed_id FROM "
            + later
            + " later JOIN "
            + made
            + " made ON made.id = later."
            + key
            + " WHERE made.deed_id = :deed AND later.deed_id <> :deed AND NOT EXISTS"
            + " (SELECT 1 FROM undone u WHERE u.deed_id = later.deed_id)"
            + " ORDER BY later.deed_id DESC LIMIT 1");
  }

  private static final List<Dependency> DEPENDENCIES =
      List.of(
          needs("the batch has steps", "batch", "batch_step", "batch_id"),
          needs("the batch was finished", "batch", "batch_finish", "batch_id"),
          needs("the lot was opened", "lot", "lot_opening", "lot_id"),
          needs("the piece went on", "piece", "piece_event", "piece_id"),
          needs("the piece was refilled", "piece", "piece", "refill_of"),
          needs("the rest of the pour went into another", "batch", "batch_carry", "from_batch"),
          needs("the rest of another pour is in it", "batch", "batch_carry", "to_batch"),
          needs("the tray was mixed up", "tray", "tray_mixed", "tray_id"),
          needs("the hold was lifted", "hold", "hold_lift", "hold_id"),
          needs("the timer was answered", "timer", "timer_answer", "timer_id"),
          needs("the sample was lit", "burn_sample", "burn_cycle", "sample_id"),
          needs("the flame was looked at", "burn_cycle", "burn_look", "cycle_id"),
          needs("the sample was put out", "burn_cycle", "burn_cycle_end", "cycle_id"),
          needs("the burn test was closed", "burn_test", "burn_test_close", "test_id"),
          needs("a word was given on it", "burn_test", "candle_proof", "test_id"),
          needs("the order was changed", "order_line", "order_terms", "line_id"),
          needs("pieces were picked for it", "order_line", "piece_event", "order_line_id"),
          new Dependency(
              "a newer version stands on it",
              """
              SELECT later.deed_id FROM card made
              JOIN card later ON later.kind = made.kind AND later.code = made.code
                AND later.version > made.version
              WHERE made.deed_id = :deed
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = later.deed_id)
              ORDER BY later.deed_id DESC LIMIT 1
              """),
          new Dependency(
              "the batch drew from it",
              """
              SELECT m.deed_id FROM movement m JOIN batch b ON b.id = m.batch_id
              WHERE b.deed_id = :deed AND m.deed_id <> :deed AND m.reverses IS NULL
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = m.deed_id)
              ORDER BY m.id DESC LIMIT 1
              """),
          new Dependency(
              "what was left of it went into another pour",
              """
              SELECT c.deed_id FROM batch_finish f JOIN batch_carry c ON c.from_batch = f.batch_id
              WHERE f.deed_id = :deed
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = c.deed_id)
              ORDER BY c.id DESC LIMIT 1
              """),
          new Dependency(
              "the batch was finished again meanwhile",
              """
              SELECT again.deed_id FROM deed taken
              JOIN batch_finish back ON back.deed_id = taken.undoes
              JOIN batch_finish again ON again.batch_id = back.batch_id
                AND again.deed_id <> back.deed_id
              WHERE taken.id = :deed
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = again.deed_id)
              LIMIT 1
              """),
          new Dependency(
              "later facts of its pieces stand on it",
              """
              SELECT later.deed_id FROM piece_event mine
              JOIN piece_event later ON later.piece_id = mine.piece_id AND later.id > mine.id
              WHERE mine.deed_id = :deed AND later.deed_id <> :deed
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = later.deed_id)
              ORDER BY later.id DESC LIMIT 1
              """));
}

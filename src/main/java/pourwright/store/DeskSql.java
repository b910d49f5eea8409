package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.work.Deed;
import pourwright.work.PageOf;
import pourwright.work.Reading;
import pourwright.work.ReadingBook;
import pourwright.work.Subject;
import pourwright.work.Timer;
import pourwright.work.TimerBook;

/** Timers and readings in SQL. */
final class DeskSql {
  private DeskSql() {}

  /** The columns that say what a row is about. */
  static Subject subject(ResultSet row) throws SQLException {
    return new Subject(
        Subject.Kind.valueOf(row.getString("subject_kind")), row.getString("subject_id"));
  }

  /** Timers. */
  static final class Timers implements TimerBook {
    private static final String ANSWER =
        """
        (SELECT MIN(a.deed_id) FROM timer_answer a WHERE a.timer_id = t.id
          AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = a.deed_id))
        """;
    private static final String SELECT =
        "SELECT t.*, d.at_ms, d.by_whom,"
            + " (SELECT e.at_ms FROM deed e WHERE e.id = "
            + ANSWER
            + ") AS answered_ms, (SELECT e.by_whom FROM deed e WHERE e.id = "
            + ANSWER
            + ") AS answered_by FROM timer t JOIN deed d ON d.id = t.deed_id"
            + " WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = t.deed_id)";

    private final Handle handle;

    Timers(Handle handle) {
      this.handle = handle;
    }

    private static Timer map(ResultSet row) throws SQLException {
      return new Timer(
          row.getLong("id"),
          row.getString("label"),
          subject(row),
          Row.at(row, "at_ms"),
          Row.at(row, "due_ms"),
          row.getString("by_whom"),
          Row.atOrNull(row, "answered_ms"),
          row.getString("answered_by"),
          row.getLong("deed_id"));
    }

    @Override
    public long nextId() {
      return Ids.next(handle, "timer");
    }

    @Override
    public Optional<Timer> timer(long id) {
      return Ids.row(handle, SELECT + " AND t.id = :id", id, (row, ctx) -> map(row));
    }

    @Override
    public List<Timer> running() {
      return handle
          .createQuery(SELECT + " AND t.id IN" + StillOpen.TIMER.ids() + "ORDER BY t.due_ms, t.id")
          .map((row, ctx) -> map(row))
          .list();
    }

    @Override
    public List<Timer> of(Subject subject) {
      return handle
          .createQuery(
              SELECT + " AND t.subject_kind = :kind AND t.subject_id = :subject ORDER BY t.id")
          .bind("kind", subject.kind().name())
          .bind("subject", subject.id())
          .map((row, ctx) -> map(row))
          .list();
    }

    @Override
    public void add(Timer timer) {
      handle
          .createUpdate(
              """
              INSERT INTO timer (id, label, subject_kind, subject_id, due_ms, deed_id)
              VALUES (:id, :label, :kind, :subject, :due, :deed)
              """)
          .bind("id", timer.id())
          .bind("label", timer.label())
          .bind("kind", timer.subject().kind().name())
          .bind("subject", timer.subject().id())
          .bind("due", timer.dueAt().toEpochMilli())
          .bind("deed", timer.deed())
          .execute();
      StillOpen.TIMER.retell(handle, timer.id());
    }

    @Override
    public void answer(long timer, Deed deed) {
      handle
          .createUpdate("INSERT INTO timer_answer (timer_id, deed_id) VALUES (:timer, :deed)")
          .bind("timer", timer)
          .bind("deed", deed.id())
          .execute();
      StillOpen.TIMER.retell(handle, timer);
    }
  }

  /** Readings. */
  static final class Readings implements ReadingBook {
    private static final String SELECT =
        """
        SELECT r.* FROM reading r
        WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = r.deed_id)
        """;

    private final Handle handle;

    Readings(Handle handle) {
      this.handle = handle;
    }

    private static Reading map(ResultSet row) throws SQLException {
      return new Reading(
          row.getLong("id"),
          subject(row),
          row.getString("quantity"),
          row.getDouble("value"),
          Row.at(row, "taken_ms"),
          row.getString("instrument"),
          row.getString("note"),
          row.getLong("deed_id"));
    }

    @Override
    public List<Reading> of(Subject subject) {
      return handle
          .createQuery(
              SELECT
                  + " AND r.subject_kind = :kind AND r.subject_id = :subject"
                  + " ORDER BY r.taken_ms, r.id")
          .bind("kind", subject.kind().name())
          .bind("subject", subject.id())
          .map((row, ctx) -> map(row))
          .list();
    }

    @Override
    public Optional<Reading> newest(Subject subject, String quantity) {
      return handle
          .createQuery(
              SELECT
                  + " AND r.subject_kind = :kind AND r.subject_id = :subject"
                  + " AND r.quantity = :quantity ORDER BY r.taken_ms DESC, r.id DESC LIMIT 1")
          .bind("kind", subject.kind().name())
          .bind("subject", subject.id())
          .bind("quantity", quantity)
          .map((row, ctx) -> map(row))
          .findOne();
    }

    @Override
    public PageOf<Reading> list(String quantity, @Nullable String after, int limit) {
      return Keys.newestFirst(
          handle
              .createQuery(
                  SELECT
                      + " AND r.quantity = :quantity AND r.id < :below"
                      + " ORDER BY r.id DESC LIMIT :limit")
              .bind("quantity", quantity),
          after,
          limit,
          (row, ctx) -> map(row),
          Reading::id);
    }

    @Override
    public List<Reading> ofDeed(long deed) {
      return handle
          .createQuery("SELECT * FROM reading WHERE deed_id = :deed ORDER BY id")
          .bind("deed", deed)
          .map((row, ctx) -> map(row))
          .list();
    }

    @Override
    public Reading append(Reading reading, Deed deed) {
      long id = Ids.next(handle, "reading");
      handle
          .createUpdate(
              """
              INSERT INTO reading (id, subject_kind, subject_id, quantity, value, taken_ms,
                instrument, note, deed_id)
              VALUES (:id, :kind, :subject, :quantity, :value, :taken, :instrument, :note, :deed)
              """)
          .bind("id", id)
          .bind("kind", reading.subject().kind().name())
          .bind("subject", reading.subject().id())
          .bind("quantity", reading.quantity())
          .bind("value", reading.value())
          .bind("taken", reading.takenAt().toEpochMilli())
          .bind("instrument", reading.instrument())
          .bind("note", reading.note())
          .bind("deed", deed.id())
          .execute();
      return Ids.row(handle, SELECT + " AND r.id = :id", id, (row, ctx) -> map(row)).orElseThrow();
    }
  }
}

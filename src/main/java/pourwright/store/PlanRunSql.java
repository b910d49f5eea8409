package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.work.Deed;
import pourwright.work.PageOf;
import pourwright.work.PlanRun;
import pourwright.work.PlanRunBook;

/** Runs of the planner in SQL. */
final class PlanRunSql implements PlanRunBook {
  private static final String SELECT =
      """
      SELECT r.*, d.at_ms FROM plan_run r JOIN deed d ON d.id = r.deed_id
      WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = r.deed_id)
      """;

  private final Handle handle;

  PlanRunSql(Handle handle) {
    this.handle = handle;
  }

  private static PlanRun map(ResultSet row) throws SQLException {
    return new PlanRun(
        row.getLong("id"),
        row.getString("problem_hash"),
        row.getLong("seed"),
        row.getString("status"),
        Row.doubleOrNull(row, "objective"),
        Row.doubleOrNull(row, "bound"),
        row.getLong("millis"),
        row.getString("body"),
        Row.at(row, "at_ms"),
        row.getLong("deed_id"));
  }

  @Override
  public Optional<PlanRun> newest() {
    return list(null, 1).items().stream().findFirst();
  }

  @Override
  public PageOf<PlanRun> list(@Nullable String after, int limit) {
    return Keys.newestFirst(
        handle.createQuery(SELECT + " AND r.id < :below ORDER BY r.id DESC LIMIT :limit"),
        after,
        limit,
        (row, ctx) -> map(row),
        PlanRun::id);
  }

  @Override
  public Optional<PlanRun> run(long id) {
    return Ids.row(handle, SELECT + " AND r.id = :id", id, (row, ctx) -> map(row));
  }

  @Override
  public Optional<PlanRun> ofDeed(long deed) {
    return handle
        .createQuery(
            """
            SELECT r.*, d.at_ms FROM plan_run r JOIN deed d ON d.id = r.deed_id
            WHERE r.deed_id = :deed
            """)
        .bind("deed", deed)
        .map((row, ctx) -> map(row))
        .findOne();
  }

  @Override
  public PlanRun append(PlanRun run, Deed deed) {
    long id = Ids.next(handle, "plan_run");
    handle
        .createUpdate(
            """
            INSERT INTO plan_run
              (id, problem_hash, seed, status, objective, bound, millis, body, deed_id)
            VALUES (:id, :hash, :seed, :status, :objective, :bound, :millis, :body, :deed)
            """)
        .bind("id", id)
        .bind("hash", run.problemHash())
        .bind("seed", run.seed())
        .bind("status", run.status())
        .bind("objective", run.objective())
        .bind("bound", run.bound())
        .bind("millis", run.millis())
        .bind("body", run.body())
        .bind("deed", deed.id())
        .execute();
    return run(id).orElseThrow();
  }
}

package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Carried;
import pourwright.batch.Mark;
import pourwright.batch.RecordedStep;
import pourwright.batch.RecordedStep.Used;
import pourwright.material.UnitKind;
import pourwright.stock.Amount;
import pourwright.work.BatchBook;
import pourwright.work.Deed;
import pourwright.work.PageOf;

/** Casts and pours in SQL. */
final class BatchSql implements BatchBook {
  private static final String FINISHED =
      """
      (SELECT MAX(f.deed_id) FROM batch_finish f WHERE f.batch_id = b.id
        AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = f.deed_id))
      """;
  private static final String SELECT =
      "SELECT b.*, d.at_ms, d.by_whom, (SELECT e.at_ms FROM deed e WHERE e.id = "
          + FINISHED
          + ") AS finished_ms FROM batch b JOIN deed d ON d.id = b.deed_id"
          + " WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = b.deed_id)";
  private static final String STEPS =
      """
      SELECT s.*, COALESCE(s.at_ms, d.at_ms) AS done_ms, d.by_whom FROM batch_step s JOIN deed d ON d.id = s.deed_id
      WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = s.deed_id)
      """;

  private final Handle handle;

  BatchSql(Handle handle) {
    this.handle = handle;
  }

  private static Batch map(ResultSet row) throws SQLException {
    return new Batch(
        row.getLong("id"),
        Mark.ofNumber(row.getLong("mark")),
        Json.read(row.getString("plan"), BatchPlan.class),
        Row.at(row, "at_ms"),
        Row.atOrNull(row, "finished_ms"),
        row.getString("by_whom"),
        row.getLong("deed_id"));
  }

  @Override
  public long nextId() {
    return Ids.next(handle, "batch");
  }

  @Override
  public Optional<Batch> batch(long id) {
    return handle
        .createQuery(SELECT + " AND b.id = :id")
        .bind("id", id)
        .map((row, ctx) -> map(row))
        .findOne();
  }

  @Override
  public PageOf<Batch> list(@Nullable BatchKind kind, @Nullable String after, int limit) {
    String only = kind == null ? "" : " AND b.kind = :kind";
    var query =
        handle.createQuery(SELECT + only + " AND b.id < :below ORDER BY b.id DESC LIMIT :limit");
    if (kind != null) {
      query.bind("kind", kind.name());
    }
    return Keys.newestFirst(query, after, limit, (row, ctx) -> map(row), Batch::id);
  }

  @Override
  public List<Batch> running() {
    return handle
        .createQuery(SELECT + " AND b.id IN" + StillOpen.BATCH.ids() + "ORDER BY b.id")
        .map((row, ctx) -> map(row))
        .list();
  }

  @Override
  public List<RecordedStep> steps(long batch) {
    List<RecordedStep> bare =
        handle
            .createQuery(STEPS + " AND s.batch_id = :batch ORDER BY s.id")
            .bind("batch", batch)
            .map((row, ctx) -> step(row))
            .list();
    return withAmounts(bare);
  }

  @Override
  public long newestDeed() {
    return handle
        .createQuery(
            """
            SELECT COALESCE((SELECT MAX(deed_id) FROM batch), 0)
              + COALESCE((SELECT MAX(deed_id) FROM batch_finish), 0)
              + (SELECT COUNT(*) FROM undone)
            """)
        .mapTo(Long.class)
        .one();
  }

  @Override
  public Map<Long, List<StepTime>> stepTimes(List<Long> batches) {
    Map<Long, List<StepTime>> times = new LinkedHashMap<>();
    if (batches.isEmpty()) {
      return times;
    }
    handle
        .createQuery(STEPS + " AND s.batch_id IN (<batches>) ORDER BY s.id")
        .bindList("batches", batches)
        .map(
            (row, ctx) ->
                Map.entry(
                    row.getLong("batch_id"),
                    new StepTime(row.getString("step_key"), Row.at(row, "done_ms"))))
        .forEach(e -> times.computeIfAbsent(e.getKey(), b -> new ArrayList<>()).add(e.getValue()));
    return times;
  }

  @Override
  public Optional<RecordedStep> stepOf(long deed) {
    List<RecordedStep> bare =
        handle
            .createQuery(
                """
                SELECT s.*, COALESCE(s.at_ms, d.at_ms) AS done_ms, d.by_whom FROM batch_step s JOIN deed d ON d.id = s.deed_id
                WHERE s.deed_id = :deed ORDER BY s.id
                """)
            .bind("deed", deed)
            .map((row, ctx) -> step(row))
            .list();
    return withAmounts(bare).stream().findFirst();
  }

  private static RecordedStep step(ResultSet row) throws SQLException {
    return new RecordedStep(
        row.getLong("id"),
        row.getLong("batch_id"),
        row.getString("step_key"),
        List.of(),
        Row.doubleOrNull(row, "temperature_c"),
        row.getString("note"),
        Row.at(row, "done_ms"),
        row.getString("by_whom"),
        row.getLong("deed_id"));
  }

  private record Line(long step, Used used) {}

  private List<RecordedStep> withAmounts(List<RecordedStep> bare) {
    if (bare.isEmpty()) {
      return bare;
    }
    Map<Long, List<Used>> used = new LinkedHashMap<>();
    handle
        .createQuery(
            "SELECT * FROM batch_step_amount WHERE step_id IN (<steps>) ORDER BY step_id, line")
        .bindList("steps", bare.stream().map(RecordedStep::id).toList())
        .map((row, ctx) -> line(row))
        .forEach(l -> used.computeIfAbsent(l.step(), s -> new ArrayList<>()).add(l.used()));
    return bare.stream().map(s -> with(s, used.getOrDefault(s.id(), List.of()))).toList();
  }

  private static Line line(ResultSet row) throws SQLException {
    Amount amount = new Amount(UnitKind.valueOf(row.getString("unit_kind")), row.getLong("units"));
    return new Line(
        row.getLong("step_id"),
        new Used(row.getString("material"), Row.longOrNull(row, "lot_id"), amount));
  }

  private static RecordedStep with(RecordedStep s, List<Used> used) {
    return new RecordedStep(
        s.id(), s.batch(), s.key(), used, s.temperatureC(), s.note(), s.at(), s.by(), s.deed());
  }

  @Override
  public List<Carried> carried() {
    return new CarrySql(handle).all();
  }

  @Override
  public List<Carried> carried(long batch) {
    return new CarrySql(handle).of(batch);
  }

  @Override
  public Optional<Carried> carriedBy(long deed) {
    return new CarrySql(handle).ofDeed(deed);
  }

  @Override
  public Carried append(Carried carried) {
    return new CarrySql(handle).append(carried);
  }

  @Override
  public void add(Batch batch) {
    PieceSql.addMark(handle, batch.mark(), "BATCH", batch.id(), batch.deed());
    handle
        .createUpdate(
            """
            INSERT INTO batch (id, kind, mark, card, card_version, plan, deed_id)
            VALUES (:id, :kind, :mark, :card, :version, :plan, :deed)
            """)
        .bind("id", batch.id())
        .bind("kind", batch.plan().kind().name())
        .bind("mark", batch.mark().number())
        .bind("card", batch.plan().card())
        .bind("version", batch.plan().cardVersion())
        .bind("plan", Json.write(batch.plan(), BatchPlan.class))
        .bind("deed", batch.deed())
        .execute();
    StillOpen.BATCH.retell(handle, batch.id());
  }

  @Override
  public RecordedStep append(RecordedStep step) {
    long id = Ids.next(handle, "batch_step");
    handle
        .createUpdate(
            """
            INSERT INTO batch_step (id, batch_id, step_key, temperature_c, note, deed_id, at_ms)
            VALUES (:id, :batch, :key, :temperature, :note, :deed,
              NULLIF(:at, (SELECT at_ms FROM deed WHERE id = :deed)))
            """)
        .bind("at", step.at().toEpochMilli())
        .bind("id", id)
        .bind("batch", step.batch())
        .bind("key", step.key())
        .bind("temperature", step.temperatureC())
        .bind("note", step.note())
        .bind("deed", step.deed())
        .execute();
    int line = 0;
    for (Used used : step.used()) {
      line++;
      handle
          .createUpdate(
              """
              INSERT INTO batch_step_amount (step_id, line, material, lot_id, unit_kind, units)
              VALUES (:step, :line, :material, :lot, :kind, :units)
              """)
          .bind("step", id)
          .bind("line", line)
          .bind("material", used.material())
          .bind("lot", used.lot())
          .bind("kind", used.amount().kind().name())
          .bind("units", used.amount().units())
          .execute();
    }
    return new RecordedStep(
        id,
        step.batch(),
        step.key(),
        step.used(),
        step.temperatureC(),
        step.note(),
        step.at(),
        step.by(),
        step.deed());
  }

  @Override
  public void finish(long batch, Deed deed) {
    handle
        .createUpdate("INSERT INTO batch_finish (batch_id, deed_id) VALUES (:batch, :deed)")
        .bind("batch", batch)
        .bind("deed", deed.id())
        .execute();
    StillOpen.BATCH.retell(handle, batch);
  }
}

package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import pourwright.batch.Carried;
import pourwright.material.UnitKind;
import pourwright.stock.Amount;

/** What went from one pour into another, in SQL. */
record CarrySql(Handle handle) {
  private static final String SELECT =
      """
      SELECT c.* FROM batch_carry c
      WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = c.deed_id)
      """;

  private static Carried map(ResultSet row) throws SQLException {
    return new Carried(
        row.getLong("id"),
        row.getLong("from_batch"),
        row.getLong("to_batch"),
        new Amount(UnitKind.MASS, row.getLong("units")),
        row.getLong("deed_id"));
  }

  List<Carried> all() {
    return handle.createQuery(SELECT + "ORDER BY c.id").map((row, ctx) -> map(row)).list();
  }

  List<Carried> of(long batch) {
    return handle
        .createQuery(SELECT + "AND (c.from_batch = :batch OR c.to_batch = :batch) ORDER BY c.id")
        .bind("batch", batch)
        .map((row, ctx) -> map(row))
        .list();
  }

  Optional<Carried> ofDeed(long deed) {
    return handle
        .createQuery("SELECT * FROM batch_carry WHERE deed_id = :deed")
        .bind("deed", deed)
        .map((row, ctx) -> map(row))
        .findFirst();
  }

  Carried append(Carried carried) {
    long id = Ids.next(handle, "batch_carry");
    handle
        .createUpdate(
            """
            INSERT INTO batch_carry (id, from_batch, to_batch, units, deed_id)
            VALUES (:id, :from, :into, :units, :deed)
            """)
        .bind("id", id)
        .bind("from", carried.from())
        .bind("into", carried.into())
        .bind("units", carried.amount().units())
        .bind("deed", carried.deed())
        .execute();
    return new Carried(id, carried.from(), carried.into(), carried.amount(), carried.deed());
  }
}

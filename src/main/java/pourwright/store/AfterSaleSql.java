package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.work.AfterSale;
import pourwright.work.AfterSaleBook;
import pourwright.work.Deed;
import pourwright.work.PageOf;

/** The register of what came after sales, in SQL. */
record AfterSaleSql(Handle handle) implements AfterSaleBook {
  private static final String SELECT =
      """
      SELECT a.* FROM after_sale a
      WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = a.deed_id)
      """;

  private static AfterSale map(ResultSet row) throws SQLException {
    return new AfterSale(
        row.getLong("id"),
        AfterSale.Kind.valueOf(row.getString("kind")),
        Row.longOrNull(row, "piece_id"),
        row.getString("order_number"),
        row.getString("what"),
        Row.day(row, "learned_on"),
        row.getString("words"),
        row.getLong("deed_id"));
  }

  @Override
  public Optional<AfterSale> entry(long id) {
    return Ids.row(handle, SELECT + " AND a.id = :id", id, (row, ctx) -> map(row));
  }

  @Override
  public PageOf<AfterSale> list(@Nullable String after, int limit) {
    return Keys.newestFirst(
        handle.createQuery(SELECT + " AND a.id < :below ORDER BY a.id DESC LIMIT :limit"),
        after,
        limit,
        (row, ctx) -> map(row),
        AfterSale::id);
  }

  @Override
  public List<AfterSale> ofDeed(long deed) {
    return handle
        .createQuery("SELECT * FROM after_sale WHERE deed_id = :deed ORDER BY id")
        .bind("deed", deed)
        .map((row, ctx) -> map(row))
        .list();
  }

  @Override
  public AfterSale append(AfterSale entry, Deed deed) {
    long id = Ids.next(handle, "after_sale");
    handle
        .createUpdate(
            """
            INSERT INTO after_sale (id, kind, piece_id, order_number, what, learned_on, words,
              deed_id)
            VALUES (:id, :kind, :piece, :order, :what, :learned, :words, :deed)
            """)
        .bind("id", id)
        .bind("kind", entry.kind().name())
        .bind("piece", entry.piece())
        .bind("order", entry.order())
        .bind("what", entry.what())
        .bind("learned", entry.learnedOn().toString())
        .bind("words", entry.words())
        .bind("deed", deed.id())
        .execute();
    return entry(id).orElseThrow();
  }
}

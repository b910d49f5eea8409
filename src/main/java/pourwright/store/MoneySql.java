package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import pourwright.cost.MoneyKind;
import pourwright.work.Deed;
import pourwright.work.MoneyBook;
import pourwright.work.MoneyFact;

/** Money in SQL. */
record MoneySql(Handle handle) implements MoneyBook {
  private static final int CHUNK = 500;
  private static final String SELECT =
      """
      SELECT m.* FROM money m
      WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = m.deed_id)
      """;

  private static MoneyFact map(ResultSet row) throws SQLException {
    return new MoneyFact(
        row.getLong("id"),
        MoneyKind.valueOf(row.getString("kind")),
        row.getString("order_number"),
        Row.longOrNull(row, "line_id"),
        row.getLong("minor"),
        row.getString("currency"),
        Row.day(row, "on_day"),
        row.getString("words"),
        row.getLong("deed_id"));
  }

  @Override
  public List<MoneyFact> all() {
    return handle.createQuery(SELECT + " ORDER BY m.id").map((row, ctx) -> map(row)).list();
  }

  @Override
  public List<MoneyFact> of(String order) {
    return handle
        .createQuery(SELECT + " AND m.order_number = :order ORDER BY m.id")
        .bind("order", order)
        .map((row, ctx) -> map(row))
        .list();
  }

  @Override
  public Map<Long, Long> agreed(Collection<Long> lines) {
    Map<Long, Long> agreed = new TreeMap<>();
    List<Long> all = List.copyOf(lines);
    for (int i = 0; i < all.size(); i += CHUNK) {
      handle
          .createQuery(SELECT + " AND m.kind = 'AGREED' AND m.line_id IN (<lines>) ORDER BY m.id")
          .bindList("lines", all.subList(i, Math.min(all.size(), i + CHUNK)))
          .map((row, ctx) -> Map.entry(row.getLong("line_id"), row.getLong("minor")))
          .forEach(e -> agreed.put(e.getKey(), e.getValue()));
    }
    return agreed;
  }

  @Override
  public List<MoneyFact> ofDeed(long deed) {
    return handle
        .createQuery("SELECT * FROM money WHERE deed_id = :deed ORDER BY id")
        .bind("deed", deed)
        .map((row, ctx) -> map(row))
        .list();
  }

  @Override
  public MoneyFact append(MoneyFact fact, Deed deed) {
    long id = Ids.next(handle, "money");
    handle
        .createUpdate(
            """
            INSERT INTO money (id, kind, order_number, line_id, minor, currency, on_day, words,
              deed_id)
            VALUES (:id, :kind, :order, :line, :minor, :currency, :day, :words, :deed)
            """)
        .bind("id", id)
        .bind("kind", fact.kind().name())
        .bind("order", fact.order())
        .bind("line", fact.line())
        .bind("minor", fact.minor())
        .bind("currency", fact.currency())
        .bind("day", fact.day().toString())
        .bind("words", fact.words())
        .bind("deed", deed.id())
        .execute();
    return Ids.row(handle, SELECT + " AND m.id = :id", id, (row, ctx) -> map(row)).orElseThrow();
  }
}

package pourwright.store;

import java.util.List;
import org.jdbi.v3.core.Handle;

/** The tables kept for speed: whether they agree with the ledger, and working them out anew. */
final class Kept {
  private static final String BALANCES =
      """
      SELECT COUNT(*) FROM (
        SELECT l.id FROM lot l
        LEFT JOIN (SELECT lot_id, SUM(units) AS units FROM movement GROUP BY lot_id) m
          ON m.lot_id = l.id
        LEFT JOIN lot_balance b ON b.lot_id = l.id
        WHERE COALESCE(m.units, 0) <> COALESCE(b.units, 0)) AS wrong
      """;

  /**
   * Deeds by the number of counting deeds that take them back, directly; down the chain in Java.
   */
  private static final String UNDOES =
      "SELECT id, undoes FROM deed WHERE undoes IS NOT NULL ORDER BY id DESC";

  private Kept() {}

  static long wrong(Handle handle) {
    long balances = handle.createQuery(BALANCES).mapTo(Long.class).one();
    java.util.Set<Long> should = undone(handle);
    java.util.Set<Long> are =
        new java.util.TreeSet<>(
            handle.createQuery("SELECT deed_id FROM undone").mapTo(Long.class).list());
    long undone =
        should.stream().filter(d -> !are.contains(d)).count()
            + are.stream().filter(d -> !should.contains(d)).count();
    return balances + undone + piecesWrong(handle) + ordersWrong(handle) + StillOpen.wrong(handle);
  }

  /** A deed is undone when some deed that takes it back is itself not undone. */
  private static java.util.Set<Long> undone(Handle handle) {
    java.util.Set<Long> undone = new java.util.TreeSet<>();
    handle
        .createQuery(UNDOES)
        .map((row, ctx) -> new long[] {row.getLong("id"), row.getLong("undoes")})
        .forEach(
            d -> {
              if (!undone.contains(d[0])) {
                undone.add(d[1]);
              }
            });
    return undone;
  }

  private static long piecesWrong(Handle handle) {
    PieceSql pieces = new PieceSql(handle);
    long wrong = 0;
    List<Long> ids =
        handle.createQuery("SELECT id FROM piece ORDER BY id").mapTo(Long.class).list();
    for (long id : ids) {
      String told =
          pieces
              .piece(id)
              .map(p -> p.candle().orElse(p.vesselDesign()) + " " + p.state().code())
              .orElse("");
      String kept =
          handle
              .createQuery("SELECT design || ' ' || state FROM piece_now WHERE piece_id = :id")
              .bind("id", id)
              .mapTo(String.class)
              .findOne()
              .orElse("");
      if (!told.equals(kept)) {
        wrong++;
      }
    }
    return wrong;
  }

  private static long ordersWrong(Handle handle) {
    return handle
        .createQuery(
            """
            SELECT COUNT(*) FROM order_now o WHERE o.state <> (
              SELECT f.state FROM order_fact f WHERE f.order_number = o.order_number
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = f.deed_id)
              ORDER BY f.id DESC LIMIT 1)
            """)
        .mapTo(Long.class)
        .one();
  }

  static long rebuild(Handle handle) {
    long wrong = wrong(handle);
    handle.execute("DELETE FROM lot_balance");
    handle.execute(
        """
        INSERT INTO lot_balance (lot_id, units)
        SELECT lot_id, SUM(units) FROM movement GROUP BY lot_id
        """);
    java.util.Set<Long> undone = undone(handle);
    handle.execute("DELETE FROM undone");
    undone.forEach(d -> handle.execute("INSERT INTO undone (deed_id) VALUES (?)", d));
    StillOpen.rebuild(handle);
    List<Long> ids =
        handle.createQuery("SELECT id FROM piece ORDER BY id").mapTo(Long.class).list();
    new PieceSql(handle).retell(ids);
    new OrderSql(handle)
        .retell(
            handle
                .createQuery("SELECT DISTINCT order_number FROM order_fact")
                .mapTo(String.class)
                .list());
    return wrong;
  }
}

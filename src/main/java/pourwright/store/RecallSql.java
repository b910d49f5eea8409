package pourwright.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;
import pourwright.work.RecallBook;

/** Where pieces are, a few hundred in one statement. */
record RecallSql(Handle handle) implements RecallBook {
  private static final int CHUNK = 500;

  @Override
  public List<Long> ofCard(String drawer, String code) {
    String sql =
        switch (drawer) {
          case "candle" -> "SELECT piece_id FROM piece_now WHERE design = :code";
          case "vessel" -> "SELECT piece_id FROM piece_now WHERE vessel_design = :code";
          case "mix" ->
              """
              SELECT w.piece_id FROM batch b JOIN piece p ON p.made_in = b.id
              JOIN piece_now w ON w.piece_id = p.id WHERE b.kind = 'CAST' AND b.card = :code
              """;
          case "pour" ->
              """
              SELECT DISTINCT e.piece_id FROM batch b JOIN piece_event e ON e.batch_id = b.id
              WHERE b.kind = 'POUR' AND b.card = :code
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id)
              """;
          default -> "";
        };
    return sql.isEmpty()
        ? List.of()
        : handle.createQuery(sql).bind("code", code).mapTo(Long.class).list();
  }

  @Override
  public List<Long> pickedFor(String order) {
    return handle
        .createQuery(
            """
            SELECT w.piece_id FROM order_line l JOIN piece_now w ON w.order_line_id = l.id
            WHERE l.order_number = :order AND w.state = 'Picked' ORDER BY w.piece_id
            """)
        .bind("order", order)
        .mapTo(Long.class)
        .list();
  }

  @Override
  public List<Long> pickedForLine(long line) {
    return handle
        .createQuery(
            """
            SELECT piece_id FROM piece_now
            WHERE order_line_id = :line AND state = 'Picked' ORDER BY piece_id
            """)
        .bind("line", line)
        .mapTo(Long.class)
        .list();
  }

  @Override
  public List<Long> standing(String design, String state, int most) {
    return handle
        .createQuery(
            """
            SELECT piece_id FROM piece_now
            WHERE design = :design AND state = :state ORDER BY piece_id LIMIT :most
            """)
        .bind("design", design)
        .bind("state", state)
        .bind("most", most)
        .mapTo(Long.class)
        .list();
  }

  @Override
  public java.util.Map<String, Integer> pouredBefore(java.time.Instant moment) {
    java.util.Map<String, Integer> counts = new java.util.TreeMap<>();
    handle
        .createQuery(
            """
            SELECT w.design, COUNT(*) AS n FROM piece_now w
            JOIN piece_event e ON e.piece_id = w.piece_id AND e.step = 'POURED'
            WHERE w.state = 'Rested' AND e.at_ms < :moment
              AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id)
            GROUP BY w.design
            """)
        .bind("moment", moment.toEpochMilli())
        .map((row, ctx) -> java.util.Map.entry(row.getString("design"), row.getInt("n")))
        .forEach(e -> counts.put(e.getKey(), e.getValue()));
    return counts;
  }

  @Override
  public java.util.Map<String, Integer> counts(String state) {
    java.util.Map<String, Integer> counts = new java.util.TreeMap<>();
    handle
        .createQuery(
            "SELECT design, COUNT(*) AS n FROM piece_now WHERE state = :state GROUP BY design")
        .bind("state", state)
        .map((row, ctx) -> java.util.Map.entry(row.getString("design"), row.getInt("n")))
        .forEach(e -> counts.put(e.getKey(), e.getValue()));
    return counts;
  }

  @Override
  public List<Whereabouts> of(Collection<Long> pieces) {
    List<Long> ids = List.copyOf(new TreeSet<>(pieces));
    List<Whereabouts> found = new ArrayList<>();
    for (int i = 0; i < ids.size(); i += CHUNK) {
      handle
          .createQuery(
              """
              SELECT p.id, p.mark, w.design, w.state, e.step, e.at_ms, l.order_number, o.channel,
                o.customer, c.name
              FROM piece p JOIN piece_now w ON w.piece_id = p.id
              JOIN piece_event e ON e.id = (SELECT MAX(n.id) FROM piece_event n
                WHERE n.piece_id = p.id AND n.step <> 'GRADED'
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = n.deed_id))
              LEFT JOIN order_line l ON l.id = w.order_line_id
              LEFT JOIN order_now o ON o.order_number = l.order_number
              LEFT JOIN customer c ON c.ref = o.customer
              WHERE p.id IN (<ids>) ORDER BY p.id
              """)
          .bindList("ids", ids.subList(i, Math.min(ids.size(), i + CHUNK)))
          .map(
              (row, ctx) ->
                  new Whereabouts(
                      row.getLong("id"),
                      row.getLong("mark"),
                      row.getString("design"),
                      row.getString("state"),
                      row.getString("step"),
                      Row.at(row, "at_ms"),
                      row.getString("order_number"),
                      row.getString("channel"),
                      row.getString("customer"),
                      row.getString("name")))
          .forEach(found::add);
    }
    return found;
  }
}

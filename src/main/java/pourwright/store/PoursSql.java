package pourwright.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Pours of candles beside their burn tests. */
final class PoursSql {
  private static final String EDITION = Editions.of("piece_event");

  private PoursSql() {}

  /** A word that changes whenever something happens to a piece. */
  static String edition(Handle handle) {
    return Editions.read(handle, EDITION);
  }

  /** As {@link pourwright.work.BurnBook#poursSinceBurnt} says. */
  static Map<String, List<Long>> sinceBurnt(Handle handle, @Nullable String candle) {
    var query =
        handle.createQuery(
            """
            SELECT p.design, p.batch_id
            FROM piece_event p JOIN (
              SELECT t.candle, COALESCE(MAX(e.at_ms), MIN(d.at_ms)) AS burnt_ms
              FROM burn_test t JOIN deed d ON d.id = t.deed_id
              JOIN burn_test_close k ON k.test_id = t.id AND k.verdict = 'pass'
              JOIN burn_sample s ON s.test_id = t.id
              LEFT JOIN piece_event e ON e.piece_id = s.piece_id AND e.step = 'POURED'
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id)
              WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = t.deed_id)
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = k.deed_id)
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = s.deed_id)
            """
                + (candle == null ? "" : "  AND t.candle = :candle\n")
                + """
              GROUP BY t.candle) b ON b.candle = p.design
            WHERE p.step = 'POURED' AND p.batch_id IS NOT NULL AND p.at_ms > b.burnt_ms
              AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = p.deed_id)
            GROUP BY p.design, p.batch_id ORDER BY MIN(p.at_ms), p.batch_id
            """);
    if (candle != null) {
      query.bind("candle", candle);
    }
    Map<String, List<Long>> pours = new TreeMap<>();
    query
        .map((row, ctx) -> Map.entry(row.getString("design"), row.getLong("batch_id")))
        .forEach(e -> pours.computeIfAbsent(e.getKey(), c -> new ArrayList<>()).add(e.getValue()));
    return Collections.unmodifiableMap(pours);
  }
}

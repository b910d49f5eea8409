package pourwright.store;

import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import pourwright.material.UnitKind;
import pourwright.stock.Amount;

/** How much there is of each material over all its lots. */
final class LotSums {
  private final Handle handle;

  LotSums(Handle handle) {
    this.handle = handle;
  }

  Map<String, Amount> onHand() {
    return sums("", "");
  }

  Map<String, Amount> drawable(LocalDate today) {
    return sums(
        """
         AND (l.expires_on IS NULL OR l.expires_on >= :today)
         AND l.id NOT IN (SELECT CAST(h.subject_id AS BIGINT) FROM hold h
          WHERE h.subject_kind = 'LOT'
          AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = h.deed_id)
          AND NOT EXISTS (SELECT 1 FROM hold_lift x WHERE x.hold_id = h.id
            AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = x.deed_id)))
        """,
        today.toString());
  }

  private Map<String, Amount> sums(String only, String today) {
    Map<String, Amount> sums = new TreeMap<>();
    var query =
        handle.createQuery(
            """
            SELECT l.material, l.unit_kind, SUM(b.units) AS units
            FROM lot_balance b CROSS JOIN lot l
            WHERE l.id = b.lot_id AND b.units > 0
              AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = l.deed_id)
            """
                + only
                + " GROUP BY l.material, l.unit_kind ORDER BY l.material");
    if (!only.isEmpty()) {
      query.bind("today", today);
    }
    query
        .map(
            (row, ctx) ->
                Map.entry(
                    row.getString("material"),
                    new Amount(UnitKind.valueOf(row.getString("unit_kind")), row.getLong("units"))))
        .forEach(e -> sums.merge(e.getKey(), e.getValue(), Amount::plus));
    return sums;
  }
}

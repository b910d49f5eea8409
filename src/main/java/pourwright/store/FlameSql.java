package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import pourwright.work.BurnBook;
import pourwright.work.BurnLife;
import pourwright.work.BurnTest;
import pourwright.work.Deed;

/** Cycles of burning and what was seen in them, in SQL. */
final class FlameSql {
  private static final String CYCLES =
      """
      SELECT c.*, e.ended_ms, e.how FROM burn_cycle c
      LEFT JOIN burn_cycle_end e ON e.cycle_id = c.id
        AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id)
      WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = c.deed_id)
      """;
  private static final String LOOKS =
      "SELECT l.*, d.at_ms, d.by_whom FROM burn_look l JOIN deed d ON d.id = l.deed_id ";

  private final Handle handle;

  FlameSql(Handle handle) {
    this.handle = handle;
  }

  private static BurnTest.Cycle cycle(ResultSet row) throws SQLException {
    return new BurnTest.Cycle(
        row.getLong("id"),
        row.getLong("sample_id"),
        row.getInt("number"),
        Row.at(row, "lit_ms"),
        Row.atOrNull(row, "ended_ms"),
        row.getString("how"));
  }

  private static BurnTest.Seen seen(ResultSet row) throws SQLException {
    BurnTest.Look look =
        new BurnTest.Look(
            row.getDouble("minute"),
            Row.doubleOrNull(row, "mass_g"),
            Row.doubleOrNull(row, "flame_height_mm"),
            Row.doubleOrNull(row, "pool_length_mm"),
            Row.doubleOrNull(row, "pool_width_mm"),
            Row.doubleOrNull(row, "pool_depth_mm"),
            Row.doubleOrNull(row, "wall_c"),
            Row.doubleOrNull(row, "base_c"),
            row.getString("soot"),
            row.getString("mushroom"),
            Row.doubleOrNull(row, "secondary_ignition_s"),
            Row.doubleOrNull(row, "after_smoke_s"),
            Row.flagOrNull(row, "crack"),
            Row.flagOrNull(row, "seep"),
            Row.flagOrNull(row, "smoke"),
            row.getString("note"));
    return new BurnTest.Seen(
        row.getLong("id"),
        row.getLong("cycle_id"),
        look,
        Row.at(row, "at_ms"),
        row.getString("by_whom"),
        row.getLong("deed_id"));
  }

  List<BurnTest.Cycle> cycles(long sample) {
    return handle
        .createQuery(CYCLES + " AND c.sample_id = :sample ORDER BY c.id")
        .bind("sample", sample)
        .map((row, ctx) -> cycle(row))
        .list();
  }

  Optional<BurnTest.Cycle> cycle(long id) {
    return handle
        .createQuery(CYCLES + " AND c.id = :id")
        .bind("id", id)
        .map((row, ctx) -> cycle(row))
        .findFirst();
  }

  List<BurnTest.Cycle> burning() {
    return handle
        .createQuery(CYCLES + " AND c.id IN" + StillOpen.CYCLE.ids() + "ORDER BY c.id")
        .map((row, ctx) -> cycle(row))
        .list();
  }

  List<BurnTest.Seen> seen(long cycle) {
    return handle
        .createQuery(
            LOOKS
                + """
                WHERE l.cycle_id = :cycle
                  AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = l.deed_id)
                ORDER BY l.minute, l.id
                """)
        .bind("cycle", cycle)
        .map((row, ctx) -> seen(row))
        .list();
  }

  /** What the passed tests of every version of every candle's card have shown. */
  Map<BurnSql.OfVersion, BurnBook.Extremes> extremes() {
    Map<BurnSql.OfVersion, BurnBook.Extremes> all = new LinkedHashMap<>();
    handle
        .createQuery(
            """
            SELECT y.candle, y.candle_version,
              MAX(y.hours) AS hours, MAX(y.wall) AS wall, MIN(y.life) AS life FROM (
              SELECT t.candle, t.candle_version, s.id,
                MAX(CASE WHEN EXISTS (SELECT 1 FROM burn_look k
                  WHERE k.cycle_id = c.id AND k.note LIKE 'cycle: %')
                  OR EXISTS (SELECT 1 FROM burn_cycle b JOIN burn_cycle_end x
                    ON x.cycle_id = b.id AND x.ended_ms <= c.lit_ms AND x.ended_ms > c.lit_ms - :rest
                    WHERE b.sample_id = c.sample_id
                    AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = b.deed_id)
                    AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = x.deed_id))
                THEN NULL ELSE (e.ended_ms - c.lit_ms) / 3600000.0 END) AS hours,
                MAX((SELECT MAX(l.wall_c) FROM burn_look l WHERE l.cycle_id = c.id
                  AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = l.deed_id))) AS wall,
                COALESCE(SUM((e.ended_ms - c.lit_ms) / 3600000.0), 0) AS life
              FROM burn_test t JOIN burn_sample s ON s.test_id = t.id
              LEFT JOIN burn_cycle c ON c.sample_id = s.id
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = c.deed_id)
              LEFT JOIN burn_cycle_end e ON e.cycle_id = c.id
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id)
              WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = t.deed_id)
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = s.deed_id)
                AND EXISTS (SELECT 1 FROM burn_test_close k
                  WHERE k.test_id = t.id AND k.verdict = 'pass'
                  AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = k.deed_id))
              GROUP BY t.candle, t.candle_version, s.id) y
            GROUP BY y.candle, y.candle_version
            """)
        .bind("rest", BurnLife.REST.toMillis())
        .map(
            (row, ctx) ->
                Map.entry(
                    new BurnSql.OfVersion(row.getString("candle"), row.getInt("candle_version")),
                    new BurnBook.Extremes(
                        Row.doubleOrNull(row, "hours"),
                        Row.doubleOrNull(row, "wall"),
                        Row.doubleOrNull(row, "life"))))
        .forEach(e -> all.put(e.getKey(), e.getValue()));
    return Collections.unmodifiableMap(all);
  }

  List<BurnTest.Seen> ofDeed(long deed) {
    return handle
        .createQuery(LOOKS + "WHERE l.deed_id = :deed ORDER BY l.id")
        .bind("deed", deed)
        .map((row, ctx) -> seen(row))
        .list();
  }

  BurnTest.Cycle light(long sample, Instant at, long deed) {
    long id = Ids.next(handle, "burn_cycle");
    int number = cycles(sample).stream().mapToInt(BurnTest.Cycle::number).max().orElse(0) + 1;
    handle
        .createUpdate(
            """
            INSERT INTO burn_cycle (id, sample_id, number, lit_ms, deed_id)
            VALUES (:id, :sample, :number, :lit, :deed)
            """)
        .bind("id", id)
        .bind("sample", sample)
        .bind("number", number)
        .bind("lit", at.toEpochMilli())
        .bind("deed", deed)
        .execute();
    StillOpen.CYCLE.retell(handle, id);
    return new BurnTest.Cycle(id, sample, number, at, null, null);
  }

  BurnTest.Seen append(long cycle, BurnTest.Look look, Deed deed) {
    long id = Ids.next(handle, "burn_look");
    handle
        .createUpdate(
            """
            INSERT INTO burn_look (id, cycle_id, minute, mass_g, flame_height_mm, pool_length_mm,
              pool_width_mm, pool_depth_mm, wall_c, base_c, soot, mushroom, secondary_ignition_s,
              after_smoke_s, crack, seep, smoke, note, deed_id)
            VALUES (:id, :cycle, :minute, :mass, :flame, :length, :width, :depth, :wall, :base,
              :soot, :mushroom, :ignition, :afterSmoke, :crack, :seep, :smoke, :note, :deed)
            """)
        .bind("id", id)
        .bind("cycle", cycle)
        .bind("minute", look.minute())
        .bind("mass", look.massG())
        .bind("flame", look.flameHeightMm())
        .bind("length", look.poolLengthMm())
        .bind("width", look.poolWidthMm())
        .bind("depth", look.poolDepthMm())
        .bind("wall", look.wallC())
        .bind("base", look.baseC())
        .bind("soot", look.soot())
        .bind("mushroom", look.mushroom())
        .bind("ignition", look.secondaryIgnitionS())
        .bind("afterSmoke", look.afterSmokeS())
        .bind("crack", Row.flag(look.crack()))
        .bind("seep", Row.flag(look.seep()))
        .bind("smoke", Row.flag(look.smoke()))
        .bind("note", look.note())
        .bind("deed", deed.id())
        .execute();
    return new BurnTest.Seen(id, cycle, look, deed.at(), deed.by(), deed.id());
  }

  void end(long cycle, String how, Instant at, long deed) {
    handle
        .createUpdate(
            """
            INSERT INTO burn_cycle_end (cycle_id, how, ended_ms, deed_id)
            VALUES (:cycle, :how, :ended, :deed)
            """)
        .bind("cycle", cycle)
        .bind("how", how)
        .bind("ended", at.toEpochMilli())
        .bind("deed", deed)
        .execute();
    StillOpen.CYCLE.retell(handle, cycle);
  }
}

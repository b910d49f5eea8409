package pourwright.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import pourwright.batch.Grade;
import pourwright.work.PieceBook;

/** Many pieces at once, by few statements: how many stand where, how the latest fared. */
final class PieceCounts {
  /** SQLite takes no more than 500 parts of one question. */
  private static final int AT_ONCE = 100;

  private final Handle handle;

  PieceCounts(Handle handle) {
    this.handle = handle;
  }

  Map<PieceBook.DesignState, Long> counts() {
    Map<PieceBook.DesignState, Long> counts = new LinkedHashMap<>();
    handle
        .createQuery(
            """
            SELECT design, state, COUNT(*) AS n FROM piece_now
            GROUP BY design, state ORDER BY design, state
            """)
        .map(
            (row, ctx) ->
                Map.entry(
                    new PieceBook.DesignState(row.getString("design"), row.getString("state")),
                    row.getLong("n")))
        .forEach(e -> counts.put(e.getKey(), e.getValue()));
    return counts;
  }

  Map<String, Long> inStates(Collection<String> states) {
    Map<String, Long> counts = new TreeMap<>();
    handle
        .createQuery(
            """
            SELECT state, COUNT(*) AS n FROM piece_now WHERE state IN (<states>) GROUP BY state
            """)
        .bindList("states", List.copyOf(states))
        .map((row, ctx) -> Map.entry(row.getString("state"), row.getLong("n")))
        .forEach(e -> counts.put(e.getKey(), e.getValue()));
    return counts;
  }

  Map<String, PieceBook.Fared> fared(Collection<String> designs, int latest) {
    List<String> all = designs.stream().distinct().toList();
    Map<String, PieceBook.Fared> fared = new TreeMap<>();
    for (int i = 0; i < all.size(); i += AT_ONCE) {
      some(all.subList(i, Math.min(all.size(), i + AT_ONCE)), latest, fared);
    }
    return fared;
  }

  private void some(List<String> designs, int latest, Map<String, PieceBook.Fared> into) {
    // one part a design: each walks its own latest pieces by the index and stops there
    String part =
        """
        SELECT %d AS nth, COUNT(*) AS made, COALESCE(SUM(CASE WHEN w.state = 'Gone' AND EXISTS (
            SELECT 1 FROM piece_event e WHERE e.piece_id = w.piece_id
              AND e.step = 'SCRAPPED'
              AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id))
          THEN 1 ELSE 0 END), 0) AS scrapped
        FROM (SELECT n.piece_id, n.state FROM piece_now n WHERE n.design = :design%d
          ORDER BY n.piece_id DESC LIMIT :latest) w
        """;
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < designs.size(); i++) {
      parts.add(String.format(java.util.Locale.ROOT, part, i, i));
    }
    var query = handle.createQuery(String.join(" UNION ALL ", parts)).bind("latest", latest);
    for (int i = 0; i < designs.size(); i++) {
      query.bind("design" + i, designs.get(i));
    }
    query
        .map(
            (row, ctx) ->
                Map.entry(
                    designs.get(row.getInt("nth")),
                    new PieceBook.Fared(row.getInt("made"), row.getInt("scrapped"))))
        .forEach(e -> into.put(e.getKey(), e.getValue()));
  }

  PieceBook.Fates fates(Collection<Long> casts) {
    return handle
        .createQuery(
            """
            SELECT COUNT(*) AS demolded,
              COALESCE(SUM(w.poured), 0) AS poured,
              COALESCE(SUM(CASE WHEN w.poured = 0 THEN w.spoiled ELSE 0 END), 0) AS before_wax,
              COALESCE(SUM(CASE WHEN w.poured = 1 AND w.tested = 0 THEN w.spoiled ELSE 0 END), 0)
                AS after_wax
            FROM (SELECT
                CASE WHEN EXISTS (SELECT 1 FROM piece_event e WHERE e.piece_id = n.piece_id
                  AND e.step = 'POURED'
                  AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id))
                  THEN 1 ELSE 0 END AS poured,
                CASE WHEN EXISTS (SELECT 1 FROM piece_event e WHERE e.piece_id = n.piece_id
                  AND (e.step = 'SCRAPPED' OR e.grade IN ('SCRAP', 'PLANTER'))
                  AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id))
                  THEN 1 ELSE 0 END AS spoiled,
                CASE WHEN EXISTS (SELECT 1 FROM piece_event e WHERE e.piece_id = n.piece_id
                  AND e.step = 'TESTED'
                  AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id))
                  THEN 1 ELSE 0 END AS tested
              FROM piece p JOIN piece_now n ON n.piece_id = p.id
              WHERE p.made_in IN (<casts>)) w
            """)
        .bindList("casts", List.copyOf(casts))
        .map(
            (row, ctx) ->
                new PieceBook.Fates(
                    row.getInt("demolded"),
                    row.getInt("poured"),
                    row.getInt("before_wax"),
                    row.getInt("after_wax")))
        .one();
  }

  List<PieceBook.Standing> standing(Collection<String> states) {
    if (states.isEmpty()) {
      return Collections.emptyList();
    }
    // the grade is that of the last fact that grades it; a life's first fact never does
    return handle
        .createQuery(
            """
            SELECT w.piece_id, w.design, w.state, w.vessel_design,
              (SELECT b.card FROM piece p JOIN batch b ON b.id = p.made_in
                WHERE p.id = w.piece_id
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = b.deed_id)) AS made_by,
              (SELECT e.grade FROM piece_event e
                WHERE e.piece_id = w.piece_id AND e.grade IS NOT NULL
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id)
                AND e.id > (SELECT MIN(f.id) FROM piece_event f WHERE f.piece_id = w.piece_id
                  AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = f.deed_id))
                ORDER BY e.id DESC LIMIT 1) AS grade
            FROM piece_now w WHERE w.state IN (<states>) ORDER BY w.piece_id DESC
            """)
        .bindList("states", List.copyOf(states))
        .map(
            (row, ctx) -> {
              String grade = row.getString("grade");
              String card = row.getString("made_by");
              return new PieceBook.Standing(
                  row.getLong("piece_id"),
                  row.getString("design"),
                  row.getString("state"),
                  row.getString("vessel_design"),
                  card == null ? "" : card,
                  grade == null ? null : Grade.valueOf(grade));
            })
        .list();
  }
}

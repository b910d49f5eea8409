package pourwright.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.stock.Trace.Edge;
import pourwright.stock.Trace.Kind;
import pourwright.stock.Trace.Node;

/**
 * What vessels may be made of since the trays they lay on were mixed up. When a tray is mixed up,
 * each vessel on it may be any of them, so that it is traced to what all of them came of; if one of
 * them had been mixed up before, to all that this one may be made of. A vessel that was laid on
 * another tray before, or that was poured or gone by then, was not among them.
 */
final class MixedTrays {
  private static final String COUNTS =
      "NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = %s.deed_id)";
  private static final String MIXED =
      """
      SELECT x.deed_id AS mixed, p.id, p.made_in, p.refill_of, p.vessel_lot FROM tray_mixed x
      JOIN tray y ON y.id = x.tray_id
      JOIN tray_piece t ON t.tray_id = x.tray_id
      JOIN piece p ON p.id = t.piece_id
      JOIN piece_now w ON w.piece_id = p.id
      WHERE {x} AND {y}
        AND NOT EXISTS (SELECT 1 FROM tray_piece n JOIN tray z ON z.id = n.tray_id
          WHERE n.piece_id = t.piece_id AND n.tray_id > t.tray_id AND z.deed_id < x.deed_id AND {z})
        AND NOT EXISTS (SELECT 1 FROM piece_event e WHERE e.piece_id = t.piece_id
          AND e.deed_id < x.deed_id AND e.step IN ('POURED', 'SOLD', 'GIVEN', 'SCRAPPED') AND {e})
      ORDER BY x.deed_id, p.id
      """
          .replace("{x}", counts("x"))
          .replace("{y}", counts("y"))
          .replace("{z}", counts("z"))
          .replace("{e}", counts("e"));

  private final Handle handle;

  MixedTrays(Handle handle) {
    this.handle = handle;
  }

  private static String counts(String alias) {
    return String.format(java.util.Locale.ROOT, COUNTS, alias);
  }

  /** A vessel on a tray at the moment it was mixed up. */
  private record There(
      long mixed, long piece, long madeIn, @Nullable Long refillOf, @Nullable Long lot) {
    Set<Node> origins() {
      Set<Node> origins = new TreeSet<>(Set.of(new Node(Kind.BATCH, madeIn)));
      if (refillOf != null) {
        origins.add(new Node(Kind.PIECE, refillOf));
      }
      if (lot != null) {
        origins.add(new Node(Kind.LOT, lot));
      }
      return origins;
    }
  }

  /** Every edge from what a mixed-up vessel may have come of. */
  Set<Edge> edges() {
    Map<Long, List<There>> mixes = new LinkedHashMap<>();
    handle
        .createQuery(MIXED)
        .map(
            (row, ctx) ->
                new There(
                    row.getLong("mixed"),
                    row.getLong("id"),
                    row.getLong("made_in"),
                    Row.longOrNull(row, "refill_of"),
                    Row.longOrNull(row, "vessel_lot")))
        .forEach(t -> mixes.computeIfAbsent(t.mixed(), m -> new ArrayList<>()).add(t));
    Map<Long, Set<Node>> origins = new HashMap<>();
    for (List<There> together : mixes.values()) {
      Set<Node> all = new TreeSet<>();
      together.forEach(t -> all.addAll(origins.getOrDefault(t.piece(), t.origins())));
      together.forEach(t -> origins.put(t.piece(), all));
    }
    Set<Edge> edges = new LinkedHashSet<>();
    origins.forEach(
        (piece, all) -> all.forEach(o -> edges.add(new Edge(o, new Node(Kind.PIECE, piece)))));
    return edges;
  }

  /** Whether any tray was ever mixed up. */
  boolean any() {
    return handle
        .createQuery("SELECT 1 FROM tray_mixed LIMIT 1")
        .mapTo(Long.class)
        .findFirst()
        .isPresent();
  }
}

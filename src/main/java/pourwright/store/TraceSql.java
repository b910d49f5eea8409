package pourwright.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import pourwright.stock.Trace.Edge;
import pourwright.stock.Trace.Kind;
import pourwright.stock.Trace.Node;
import pourwright.work.TraceBook;

/** The edges of the trace, read from the entries themselves; what was undone leaves no edge. */
final class TraceSql implements TraceBook {
  private static final int CHUNK = 500;

  /**
   * One kind of edge.
   *
   * @param sql selects {@code f} and {@code t}; the filter goes in at {@code %s}
   * @param fromColumn the column behind {@code f}
   * @param toColumn the column behind {@code t}
   */
  private record Way(Kind from, Kind to, String sql, String fromColumn, String toColumn) {}

  private static final List<Way> WAYS =
      List.of(
          new Way(
              Kind.LOT,
              Kind.BATCH,
              """
              SELECT m.lot_id AS f, m.batch_id AS t FROM movement m
              WHERE m.batch_id IS NOT NULL AND %s
              GROUP BY m.lot_id, m.batch_id HAVING SUM(m.units) < 0
              """,
              "m.lot_id",
              "m.batch_id"),
          new Way(
              Kind.BATCH,
              Kind.PIECE,
              """
              SELECT p.made_in AS f, p.id AS t FROM piece p
              JOIN piece_now w ON w.piece_id = p.id WHERE %s
              """,
              "p.made_in",
              "p.id"),
          new Way(
              Kind.BATCH,
              Kind.PIECE,
              """
              SELECT e.batch_id AS f, e.piece_id AS t FROM piece_event e
              WHERE e.batch_id IS NOT NULL AND %s
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id)
              """,
              "e.batch_id",
              "e.piece_id"),
          new Way(
              Kind.BATCH,
              Kind.BATCH,
              """
              SELECT c.from_batch AS f, c.to_batch AS t FROM batch_carry c
              WHERE %s AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = c.deed_id)
              """,
              "c.from_batch",
              "c.to_batch"),
          new Way(
              Kind.LOT,
              Kind.PIECE,
              """
              SELECT p.vessel_lot AS f, p.id AS t FROM piece p
              JOIN piece_now w ON w.piece_id = p.id WHERE p.vessel_lot IS NOT NULL AND %s
              """,
              "p.vessel_lot",
              "p.id"),
          new Way(
              Kind.PIECE,
              Kind.PIECE,
              """
              SELECT p.refill_of AS f, p.id AS t FROM piece p
              JOIN piece_now w ON w.piece_id = p.id WHERE p.refill_of IS NOT NULL AND %s
              """,
              "p.refill_of",
              "p.id"),
          new Way(
              Kind.PIECE,
              Kind.ORDER_LINE,
              """
              SELECT e.piece_id AS f, e.order_line_id AS t FROM piece_event e
              WHERE e.order_line_id IS NOT NULL AND e.step IN ('PICKED', 'SOLD') AND %s
                AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id)
                AND NOT EXISTS (SELECT 1 FROM piece_event back WHERE back.piece_id = e.piece_id
                  AND back.id > e.id AND back.step = 'UNPICKED'
                  AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = back.deed_id))
              """,
              "e.piece_id",
              "e.order_line_id"));

  private final Handle handle;

  TraceSql(Handle handle) {
    this.handle = handle;
  }

  @Override
  public Collection<Edge> onward(Collection<Node> nodes) {
    return edges(nodes, true);
  }

  @Override
  public Collection<Edge> back(Collection<Node> nodes) {
    return edges(nodes, false);
  }

  private Collection<Edge> edges(Collection<Node> nodes, boolean forward) {
    Set<Edge> found = new LinkedHashSet<>();
    for (Way way : WAYS) {
      Kind side = forward ? way.from() : way.to();
      List<Long> ids = nodes.stream().filter(n -> n.kind() == side).map(Node::id).toList();
      String filter = (forward ? way.fromColumn() : way.toColumn()) + " IN (<ids>)";
      for (int i = 0; i < ids.size(); i += CHUNK) {
        List<Long> some = ids.subList(i, Math.min(ids.size(), i + CHUNK));
        found.addAll(some(way, filter, some));
      }
    }
    found.addAll(mixed(nodes, forward));
    return found;
  }

  /** Edges through trays that were mixed up; these are few and are worked out all together. */
  private List<Edge> mixed(Collection<Node> nodes, boolean forward) {
    MixedTrays trays = new MixedTrays(handle);
    boolean asked = nodes.stream().anyMatch(n -> forward || n.kind() == Kind.PIECE);
    if (!asked || !trays.any()) {
      return List.of();
    }
    Set<Node> wanted = new HashSet<>(nodes);
    return trays.edges().stream()
        .filter(e -> wanted.contains(forward ? e.from() : e.to()))
        .toList();
  }

  private List<Edge> some(Way way, String filter, List<Long> ids) {
    return new ArrayList<>(
        handle
            .createQuery(String.format(java.util.Locale.ROOT, way.sql(), filter))
            .bindList("ids", ids)
            .map(
                (row, ctx) ->
                    new Edge(
                        new Node(way.from(), row.getLong("f")),
                        new Node(way.to(), row.getLong("t"))))
            .list());
  }
}

package pourwright.store;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.stock.Trace.Kind;
import pourwright.stock.Trace.Node;

/**
 * The trace worked out a second time and in another way: every row of the ledger is read, the deeds
 * are gone through one after the other, and a plain walk over the arrows answers. Nothing of the
 * program's own trace is used.
 */
final class RawTrace {
  private final Map<Node, Set<Node>> onward = new HashMap<>();
  private final Map<Node, Set<Node>> back = new HashMap<>();
  final Set<Node> all = new TreeSet<>();

  private record Line(Map<String, Object> row) {
    long number(String column) {
      return ((Number) java.util.Objects.requireNonNull(row.get(column))).longValue();
    }

    @Nullable Long optional(String column) {
      return row.get(column) instanceof Number n ? n.longValue() : null;
    }

    String text(String column) {
      return String.valueOf(row.get(column));
    }
  }

  private final List<Line> movements;
  private final List<Line> pieces;
  private final List<Line> events;
  private final List<Line> carries;
  private final List<Line> trays;
  private final List<Line> laid;
  private final List<Line> mixed;
  private final Set<Long> undone = new HashSet<>();
  private final List<Long> deeds = new ArrayList<>();

  RawTrace(Store store) {
    movements = rows(store, "movement");
    pieces = rows(store, "piece");
    events = rows(store, "piece_event");
    carries = rows(store, "batch_carry");
    trays = rows(store, "tray");
    laid = rows(store, "tray_piece");
    mixed = rows(store, "tray_mixed");
    countDeeds(rows(store, "deed"));
    lots();
    rows(store, "lot").forEach(l -> all.add(new Node(Kind.LOT, l.number("id"))));
    rows(store, "batch").forEach(l -> all.add(new Node(Kind.BATCH, l.number("id"))));
    rows(store, "order_line").forEach(l -> all.add(new Node(Kind.ORDER_LINE, l.number("id"))));
    lives();
    sales();
    deeds();
  }

  private static List<Line> rows(Store store, String table) {
    return store.look(
        (Handle h) ->
            h.createQuery("SELECT * FROM " + table).mapToMap().list().stream()
                .map(Line::new)
                .toList());
  }

  /** Which deeds count: from the last to the first, one that counts takes back what it undoes. */
  private void countDeeds(List<Line> rows) {
    Map<Long, Line> byId = new TreeMap<>();
    rows.forEach(r -> byId.put(r.number("id"), r));
    for (Line deed : new TreeMap<>(byId).descendingMap().values()) {
      Long undoes = deed.optional("undoes");
      if (undoes != null && !undone.contains(deed.number("id"))) {
        undone.add(undoes);
      }
    }
    deeds.addAll(byId.keySet());
  }

  private boolean counts(Line row) {
    return !undone.contains(row.number("deed_id"));
  }

  private void arrow(Node from, Node to) {
    onward.computeIfAbsent(from, n -> new TreeSet<>()).add(to);
    back.computeIfAbsent(to, n -> new TreeSet<>()).add(from);
  }

  private void lots() {
    Map<List<Long>, Long> net = new HashMap<>();
    for (Line m : movements) {
      Long batch = m.optional("batch_id");
      if (batch != null && counts(m) && !m.text("cause").equals("REVERSED")) {
        net.merge(List.of(m.number("lot_id"), batch), m.number("units"), Math::addExact);
      }
    }
    net.forEach(
        (ends, units) -> {
          if (units < 0) {
            arrow(new Node(Kind.LOT, ends.get(0)), new Node(Kind.BATCH, ends.get(1)));
          }
        });
    for (Line c : carries) {
      if (counts(c)) {
        arrow(
            new Node(Kind.BATCH, c.number("from_batch")),
            new Node(Kind.BATCH, c.number("to_batch")));
      }
    }
  }

  private static Set<Node> origins(Line piece) {
    Set<Node> origins = new TreeSet<>();
    origins.add(new Node(Kind.BATCH, piece.number("made_in")));
    Long before = piece.optional("refill_of");
    Long lot = piece.optional("vessel_lot");
    if (before != null) {
      origins.add(new Node(Kind.PIECE, before));
    }
    if (lot != null) {
      origins.add(new Node(Kind.LOT, lot));
    }
    return origins;
  }

  private void lives() {
    for (Line piece : pieces) {
      if (counts(piece)) {
        Node node = new Node(Kind.PIECE, piece.number("id"));
        all.add(node);
        origins(piece).forEach(o -> arrow(o, node));
      }
    }
    for (Line e : events) {
      Long batch = e.optional("batch_id");
      if (counts(e) && batch != null) {
        arrow(new Node(Kind.BATCH, batch), new Node(Kind.PIECE, e.number("piece_id")));
      }
    }
  }

  /** The line that each piece is out for now or left with, told from its events in order. */
  private void sales() {
    Map<Long, Set<Long>> linesOf = new TreeMap<>();
    List<Line> inOrder = new ArrayList<>(events);
    inOrder.sort(java.util.Comparator.comparingLong(e -> e.number("id")));
    for (Line e : inOrder) {
      if (!counts(e)) {
        continue;
      }
      Set<Long> lines = linesOf.computeIfAbsent(e.number("piece_id"), p -> new TreeSet<>());
      Long line = e.optional("order_line_id");
      if (e.text("step").equals("UNPICKED")) {
        lines.clear();
      } else if (line != null && Set.of("PICKED", "SOLD").contains(e.text("step"))) {
        lines.add(line);
      }
    }
    linesOf.forEach(
        (piece, lines) ->
            lines.forEach(l -> arrow(new Node(Kind.PIECE, piece), new Node(Kind.ORDER_LINE, l))));
  }

  /** Trays, deed by deed: what lies where, and what is mixed up with what. */
  private void deeds() {
    Map<Long, Set<Node>> origins = new TreeMap<>();
    pieces.stream().filter(this::counts).forEach(p -> origins.put(p.number("id"), origins(p)));
    Map<Long, Long> liesOn = new TreeMap<>();
    Set<Long> gone = new TreeSet<>();
    for (long deed : deeds) {
      if (undone.contains(deed)) {
        continue;
      }
      for (Line tray : of(trays, deed)) {
        laid.stream()
            .filter(l -> l.number("tray_id") == tray.number("id"))
            .forEach(l -> liesOn.put(l.number("piece_id"), tray.number("id")));
      }
      for (Line e : of(events, deed)) {
        if (Set.of("POURED", "SOLD", "GIVEN", "SCRAPPED").contains(e.text("step"))) {
          gone.add(e.number("piece_id"));
        }
      }
      for (Line mix : of(mixed, deed)) {
        List<Long> together =
            origins.keySet().stream()
                .filter(p -> liesOn.getOrDefault(p, -1L) == mix.number("tray_id"))
                .filter(p -> !gone.contains(p))
                .toList();
        Set<Node> any = new TreeSet<>();
        together.forEach(p -> any.addAll(origins.getOrDefault(p, Set.of())));
        together.forEach(p -> origins.put(p, any));
      }
    }
    origins.forEach((piece, from) -> from.forEach(o -> arrow(o, new Node(Kind.PIECE, piece))));
  }

  private static List<Line> of(List<Line> rows, long deed) {
    return rows.stream().filter(r -> r.number("deed_id") == deed).toList();
  }

  /** Everything that can be reached, the start left out. */
  Set<Node> reach(Node start, boolean forward) {
    Set<Node> seen = new TreeSet<>();
    Deque<Node> todo = new ArrayDeque<>(List.of(start));
    while (!todo.isEmpty()) {
      for (Node next : (forward ? onward : back).getOrDefault(todo.remove(), Set.of())) {
        if (seen.add(next)) {
          todo.add(next);
        }
      }
    }
    seen.remove(start);
    return seen;
  }
}

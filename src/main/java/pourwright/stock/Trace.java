package pourwright.stock;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The trace, both ways: what a lot went into, what a piece is made of. A walk over the ledger's own
 * entries; there is no table of traces that could disagree with them.
 */
public final class Trace {
  private Trace() {}

  /** Kinds of things that a trace runs through, in the order of making. */
  public enum Kind {
    /** A lot of material. */
    LOT,
    /** A cast or a pour. */
    BATCH,
    /** A vessel or candle. */
    PIECE,
    /** An order line that a piece was picked for. */
    ORDER_LINE
  }

  /** One thing in the trace. */
  public record Node(Kind kind, long id) implements Comparable<Node> {
    @Override
    public int compareTo(Node other) {
      int byKind = kind.compareTo(other.kind);
      return byKind != 0 ? byKind : Long.compare(id, other.id);
    }
  }

  /** {@code from} went into {@code to}. */
  public record Edge(Node from, Node to) {}

  /** Everything reached, the start not included, and how. */
  public record Reached(Set<Node> nodes, List<Edge> edges) {

    /** Keeps its own ordered copies. */
    public Reached {
      nodes = java.util.Collections.unmodifiableSet(new TreeSet<>(nodes));
      edges = List.copyOf(edges);
    }

    /** The numbers of one kind. */
    public List<Long> of(Kind kind) {
      return nodes.stream().filter(n -> n.kind() == kind).map(Node::id).toList();
    }
  }

  /**
   * Walks in one direction until nothing new is found.
   *
   * @param start where to begin
   * @param edges given some nodes, the edges that lead on from them in the wanted direction
   * @param forward true to follow edges from {@code from} to {@code to}
   */
  public static Reached walk(
      Node start, Function<Collection<Node>, Collection<Edge>> edges, boolean forward) {
    return walk(List.of(start), edges, forward);
  }

  /** Walks as from one start, from several at once; none of the starts is among what is reached. */
  public static Reached walk(
      Collection<Node> starts,
      Function<Collection<Node>, Collection<Edge>> edges,
      boolean forward) {
    Set<Node> seen = new LinkedHashSet<>(starts);
    Set<Edge> found = new LinkedHashSet<>();
    Collection<Node> frontier = List.copyOf(seen);
    while (!frontier.isEmpty()) {
      Set<Node> next = new LinkedHashSet<>();
      for (Edge edge : edges.apply(frontier)) {
        found.add(edge);
        Node reached = forward ? edge.to() : edge.from();
        if (seen.add(reached)) {
          next.add(reached);
        }
      }
      frontier = next;
    }
    starts.forEach(seen::remove);
    return new Reached(seen, List.copyOf(found));
  }
}

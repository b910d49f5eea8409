package pourwright.work;

import java.util.Collection;
import pourwright.stock.Trace.Edge;
import pourwright.stock.Trace.Node;

/** The edges of the trace, read from the ledger's entries. */
public interface TraceBook {

  /** What the given things went into. */
  Collection<Edge> onward(Collection<Node> nodes);

  /** What the given things are made of. */
  Collection<Edge> back(Collection<Node> nodes);
}

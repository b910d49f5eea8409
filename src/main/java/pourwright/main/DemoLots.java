package pourwright.main;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pourwright.work.Proving;

/** Which candles of the demo studio are of lots that were burnt; asked once for each. */
final class DemoLots {
  private final DemoHistory history;
  private final Set<Long> burnt = new HashSet<>();
  private final Set<Long> waiting = new HashSet<>();

  DemoLots(DemoHistory history) {
    this.history = history;
  }

  /** Whether every lot of wax, oil and wick in a candle has had its check burn. */
  boolean areBurnt(long piece) {
    if (burnt.contains(piece) || waiting.contains(piece)) {
      return burnt.contains(piece);
    }
    boolean are =
        history.studio().look(books -> new Proving(books).freshLotsOf(List.of(piece))).isEmpty();
    return (are ? burnt : waiting).add(piece) && are;
  }

  /** A test was passed: what waited is asked again. */
  void passed() {
    waiting.clear();
  }
}

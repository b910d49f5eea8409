package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;
import pourwright.stock.Trace.Node;

/** The trace, both ways and from everything there is, equals a plain walk over the raw rows. */
class TraceProperties {
  private static final int STEPS = 130;
  private static final Map<String, Integer> DONE = new TreeMap<>();
  private static int histories;

  private static void compare(int seed, int steps) {
    try (RandomYear year = new RandomYear(seed)) {
      year.go(steps);
      RawTrace raw = new RawTrace(year.bench.store);
      for (Node node : raw.all) {
        assertThat(year.bench.studio.traceOnward(node).nodes())
            .as("what %s went into, history %d", node, seed)
            .isEqualTo(raw.reach(node, true));
        assertThat(year.bench.studio.traceBack(node).nodes())
            .as("what %s is made of, history %d", node, seed)
            .isEqualTo(raw.reach(node, false));
      }
      year.done.forEach((what, n) -> DONE.merge(what, n, Integer::sum));
      histories++;
    }
  }

  @Property(tries = 12, shrinking = ShrinkingMode.OFF)
  void theTraceEqualsAWalkOverTheRawRows(@ForAll @IntRange(max = 10_000_000) int seed) {
    compare(seed, STEPS);
  }

  @Property(tries = 400, shrinking = ShrinkingMode.OFF)
  @Tag("long")
  void soItDoesInHundredsOfHistories(@ForAll @IntRange(max = 10_000_000) int seed) {
    compare(seed, STEPS);
  }

  /** The histories hold what they are to hold; else the comparison says little. */
  @AfterContainer
  static void everythingHappenedInThem() {
    if (histories >= 10) {
      assertThat(DONE.keySet())
          .contains("several lots at once", "put back", "carry", "lay", "mix up", "sold", "undo");
    }
    if (histories >= 100) {
      assertThat(DONE.keySet())
          .contains(
              "several lots at once",
              "put back",
              "carry",
              "lay",
              "mix up",
              "bought vessels",
              "come back",
              "refill",
              "market",
              "shop",
              "undo",
              "sold");
    }
  }
}

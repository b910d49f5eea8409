package pourwright.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Candles of pours under way, given out one by one, those that are furthest first. */
final class ComingCandles {
  private final List<RunningPour> poured;
  private final Map<String, Integer> given = new HashMap<>();
  private final Set<RunningPour> used = new LinkedHashSet<>();

  ComingCandles(List<RunningPour> poured) {
    this.poured = poured;
  }

  /** Key of the pour that the next candle of a design comes from; null when there is none. */
  @Nullable String take(String design) {
    for (RunningPour pour : poured) {
      String place = pour.key() + " " + design;
      if (given.getOrDefault(place, 0) < pour.candles(design)) {
        given.merge(place, 1, Integer::sum);
        used.add(pour);
        return pour.key();
      }
    }
    return null;
  }

  /** Pours that gave a candle, and those that want hands soon all the same. */
  List<RunningPour> used() {
    List<RunningPour> all = new ArrayList<>();
    for (RunningPour pour : poured) {
      if (used.contains(pour) || pour.wantsHandsSoon()) {
        all.add(pour);
      }
    }
    return all;
  }
}

package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceStep;
import pourwright.burn.TestSample;

/** The life of a sample: which of its cycles count, and how it ended. */
public final class BurnLife {
  /** House: a candle rests this long before it is lit again. */
  public static final Duration REST = Duration.ofHours(4);

  private BurnLife() {}

  /** Numbers of the cycles that were lit before the candle had rested from the last. */
  public static Set<Long> litEarly(List<BurnTest.Cycle> cycles) {
    Set<Long> early = new LinkedHashSet<>();
    @Nullable Instant lastOut = null;
    for (BurnTest.Cycle cycle : cycles) {
      if (lastOut != null && cycle.litAt().isBefore(lastOut.plus(REST))) {
        early.add(cycle.id());
      }
      lastOut = cycle.endedAt() == null ? lastOut : cycle.endedAt();
    }
    return early;
  }

  /** How it ended, by the last cycle's words. */
  public static TestSample.End end(List<BurnTest.Cycle> cycles) {
    return cycles.isEmpty()
        ? TestSample.End.NOT_YET
        : TestSample.End.of(cycles.get(cycles.size() - 1).ended());
  }

  /** True when a candle went on test while it still rested from its pour. */
  public static boolean wentOnTestUnrested(Books books, BurnTest.Sample sample) {
    if (sample.piece() == null) {
      return false;
    }
    PieceStep before = null;
    for (PieceEvent event : books.pieces().events(sample.piece())) {
      if (event.step() == PieceStep.TESTED) {
        return before == PieceStep.RESTING;
      }
      before = event.step();
    }
    return false;
  }
}

package pourwright.work;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import pourwright.cost.Valuation;

/**
 * Values of materials once worked out, kept until a movement of that material is written: a slate
 * must not read the years of movements each time it is looked at. Of one studio.
 */
public final class StockValues {
  private record Known(
      long newestOfAll, long newestMovement, Valuation.Method method, StockValue value) {}

  private record Timed(long newestBatch, RecordedMinutes minutes) {}

  private final Map<String, Known> known = new ConcurrentHashMap<>();
  private volatile @Nullable Timed timed;

  /** Recorded minutes, read anew when a batch was begun or finished since. */
  RecordedMinutes minutes(Books books) {
    long newest = books.batches().newestDeed();
    Timed before = timed;
    if (before != null && before.newestBatch() == newest) {
      return before.minutes();
    }
    RecordedMinutes minutes = RecordedMinutes.of(books);
    timed = new Timed(newest, minutes);
    return minutes;
  }

  /**
   * The value of a material as these books have it; taking back writes a movement too.
   *
   * @param newestOfAll number of the newest movement of any material: where nothing at all moved
   *     since the last look, no lot has to be asked
   */
  public StockValue of(Books books, String material, Valuation.Method method, long newestOfAll) {
    Known last = known.get(material);
    Known before = last != null && last.method() == method ? last : null;
    if (before != null && before.newestOfAll() == newestOfAll) {
      return before.value();
    }
    long newest = books.lots().newestMovement(material);
    StockValue value =
        (before == null ? Optional.<StockValue>empty() : next(books, material, before, newest))
            .orElseGet(() -> StockValue.of(books, material, method))
            .withoutIssues();
    known.put(material, new Known(newestOfAll, newest, method, value));
    return value;
  }

  /** What was known, with what moved since; empty where that does not tell it. */
  private static Optional<StockValue> next(
      Books books, String material, Known before, long newest) {
    if (before.newestMovement() == newest) {
      return Optional.of(before.value());
    }
    return before.newestMovement() < newest
        ? before.value().continued(books, material, before.newestMovement())
        : Optional.empty();
  }
}

package pourwright.work;

import java.util.Map;
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
    Known before = known.get(material);
    boolean same = before != null && before.method() == method;
    if (same && before.newestOfAll() == newestOfAll) {
      return before.value();
    }
    long newest = books.lots().newestMovement(material);
    StockValue value =
        same && before.newestMovement() == newest
            ? before.value()
            : StockValue.of(books, material, method);
    known.put(material, new Known(newestOfAll, newest, method, value));
    return value;
  }
}

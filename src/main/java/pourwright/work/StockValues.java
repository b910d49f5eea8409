package pourwright.work;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import pourwright.cost.Valuation;

/**
 * Values of materials once worked out, kept until a movement of that material is written: a slate
 * must not read the years of movements each time it is looked at. Of one studio.
 */
public final class StockValues {
  private record Known(long newestMovement, Valuation.Method method, StockValue value) {}

  private final Map<String, Known> known = new ConcurrentHashMap<>();

  /** The value of a material as these books have it; taking back writes a movement too. */
  public StockValue of(Books books, String material, Valuation.Method method) {
    long newest = books.lots().newestMovement(material);
    Known before = known.get(material);
    if (before != null && before.newestMovement() == newest && before.method() == method) {
      return before.value();
    }
    StockValue value = StockValue.of(books, material, method);
    known.put(material, new Known(newest, method, value));
    return value;
  }
}

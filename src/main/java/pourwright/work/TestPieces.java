package pourwright.work;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pourwright.order.OrderLine;

/**
 * Candles that are made beside an order to be burnt: for a design that is not proved for sale as
 * many as she said, less those that have burnt well or are on the shelf; one where a check burn is
 * due. They stand in the plan as a line without a day.
 */
final class TestPieces {
  /** What stands where an order has its number. */
  static final String FOR = "burn test";

  private TestPieces() {}

  /**
   * The lines with those for tests after them.
   *
   * @param most candles for a design that is not proved; 0 for no lines at all
   */
  static List<OrderLine> with(Books books, List<OrderLine> ordered, int most) {
    if (most == 0) {
      return ordered;
    }
    Proving proving = new Proving(books);
    Map<String, Proving.Checked> due = proving.checkBurns();
    Set<String> candles = new LinkedHashSet<>();
    ordered.forEach(line -> candles.add(line.design()));
    List<OrderLine> all = new ArrayList<>(ordered);
    for (String candle : candles) {
      int version =
          books.cards().current(Drawers.CANDLE, candle).map(CardVersion::version).orElse(0);
      boolean proved =
          books.burns().proof(candle, version).map(BurnTest.Proof::proved).orElse(false);
      int asked = proved ? (due.containsKey(candle) ? 1 : 0) : most;
      int burnt = proved ? 0 : proving.standing(candle, version).passedLives();
      int wanted = asked - burnt - onTheShelf(books, candle, version);
      if (wanted > 0) {
        all.add(new OrderLine(FOR, candle, 1, wanted, null, null));
      }
    }
    return all;
  }

  private static int onTheShelf(Books books, String candle, int version) {
    return books.burns().open().stream()
        .filter(t -> t.candle().equals(candle) && t.candleVersion() == version)
        .mapToInt(t -> books.burns().samples(t.id()).size())
        .sum();
  }
}

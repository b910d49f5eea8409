package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.cost.Valuation;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.stock.Cause;
import pourwright.stock.Movement;
import pourwright.stock.Price;

/**
 * What a material's stock is worth and cost, from the ledger's lines as {@link StockEntries} gives
 * them. Lots without a price make the value a guess and are said.
 *
 * @param valuation the whole history valued
 * @param unpricedLots codes of lots whose price is not known
 * @param lastPaid money for one small unit of the latest priced lot, null when none has a price
 */
public record StockValue(
    Valuation valuation, List<String> unpricedLots, @Nullable Double lastPaid) {
  /** A price that is only the last one paid is known to about this. House. */
  private static final double LAST_PRICE_UNCERTAINTY = 0.1;

  /** Copies. */
  public StockValue {
    unpricedLots = List.copyOf(unpricedLots);
  }

  /** The value of a material by a method, chosen once for the studio. */
  public static StockValue of(Books books, String material, Valuation.Method method) {
    StockEntries entries = StockEntries.of(books, material);
    return new StockValue(
        entries.valued(method),
        codes(books, entries.withoutPrice()),
        lastPaid(books.lots().prices(material), entries, null));
  }

  /**
   * The value after the movements that came later than some number, or empty where these alone do
   * not tell it: one takes another back or brings back what was drawn. Of the issues only those of
   * the later movements are in it.
   */
  Optional<StockValue> continued(Books books, String material, long after) {
    List<Movement> later = books.lots().ofMaterial(material, after);
    if (later.stream().anyMatch(m -> m.reverses() != null || m.cause() == Cause.RETURNED)) {
      return Optional.empty();
    }
    Map<Long, Price> prices = books.lots().prices(material);
    StockEntries entries = StockEntries.of(later, prices, valuation.stockAmount());
    List<String> unpriced = new ArrayList<>(unpricedLots);
    unpriced.addAll(codes(books, entries.withoutPrice()));
    return Optional.of(
        new StockValue(
            valuation.continuedBy(entries.entries()),
            unpriced,
            lastPaid(prices, entries, lastPaid)));
  }

  /** The same without its issues, which are many and which a price does not need. */
  StockValue withoutIssues() {
    return new StockValue(valuation.continuedBy(List.of()), unpricedLots, lastPaid);
  }

  private static @Nullable Double lastPaid(
      Map<Long, Price> prices, StockEntries entries, @Nullable Double before) {
    Double last = before;
    for (Movement movement : entries.movements()) {
      Price price = prices.get(movement.lot());
      if (movement.cause() == Cause.RECEIVED && price != null) {
        last = (double) price.minor() / movement.change().units();
      }
    }
    return last;
  }

  private static List<String> codes(Books books, Set<Long> lots) {
    return lots.stream()
        .flatMap(lot -> books.lots().shelf(lot).stream())
        .map(shelf -> shelf.lot().code())
        .toList();
  }

  /**
   * Money for one small unit: the stock's own value over its amount, else the last price paid with
   * a range; empty when no price is known.
   */
  public Optional<Sourced> perUnit() {
    long there = valuation.stockAmount();
    if (there > 0 && unpricedLots.isEmpty()) {
      return Optional.of(Sourced.measured((double) valuation.stockMinor() / there, 0));
    }
    return Optional.ofNullable(lastPaid)
        .map(price -> Sourced.typical(price, LAST_PRICE_UNCERTAINTY));
  }

  /** How the studio values: {@code fifo} (house) or {@code average}. */
  public static Valuation.Method method(Books books) {
    return method(books.settings().value("slate.method").orElse(null));
  }

  /** What is written down of how the studio values; null for the house's way. */
  static Valuation.Method method(@Nullable String written) {
    return switch (written == null ? "fifo" : written) {
      case "fifo" -> Valuation.Method.FIFO;
      case "average" -> Valuation.Method.MOVING_AVERAGE;
      default -> throw new OutOfRange("slate.method", "'" + written + "'", "write fifo or average");
    };
  }
}

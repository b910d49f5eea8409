package pourwright.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.cost.Valuation;
import pourwright.cost.Valuation.Entry;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.stock.Cause;
import pourwright.stock.Lot;
import pourwright.stock.Movement;
import pourwright.stock.Shelf;

/**
 * What a material's stock is worth and cost, from the ledger's own lines. A line and its exact
 * reverse fall out together; what comes back unused returns at what its lot cost; what a count
 * finds costs nothing. Lots without a price make the value a guess and are said.
 *
 * @param valuation the whole history valued
 * @param unpricedLots codes of lots whose price is not known
 * @param lastPaid money for one small unit of the latest priced lot, null when none has a price
 */
public record StockValue(
    Valuation valuation, List<String> unpricedLots, @Nullable Double lastPaid) {
  private static final int PAGE = 500;

  /** A price that is only the last one paid is known to about this. House. */
  private static final double LAST_PRICE_UNCERTAINTY = 0.1;

  /** Copies. */
  public StockValue {
    unpricedLots = List.copyOf(unpricedLots);
  }

  /** The value of a material by a method, chosen once for the studio. */
  public static StockValue of(Books books, String material, Valuation.Method method) {
    Map<Long, Lot> lots = new HashMap<>();
    List<String> unpriced = new ArrayList<>();
    Double lastPaid = null;
    for (Lot lot : lots(books, material)) {
      lots.put(lot.id(), lot);
      if (lot.price() == null) {
        unpriced.add(lot.code());
      }
    }
    List<Movement> movements = movements(books, material);
    Map<Long, Long> received = received(movements);
    List<Entry> entries = new ArrayList<>();
    for (Movement movement : movements) {
      Lot lot = lots.get(movement.lot());
      if (lot != null) {
        Entry entry = entry(movement, lot, received.getOrDefault(movement.lot(), 0L));
        entries.add(entry);
        if (movement.cause() == Cause.RECEIVED && lot.price() != null) {
          lastPaid = (double) lot.price().minor() / movement.change().units();
        }
      }
    }
    return new StockValue(Valuation.of(method, entries), unpriced, lastPaid);
  }

  private static List<Lot> lots(Books books, String material) {
    List<Lot> all = new ArrayList<>();
    String after = null;
    do {
      PageOf<Shelf> page = books.lots().list(material, after, PAGE);
      page.items().forEach(s -> all.add(s.lot()));
      after = page.next();
    } while (after != null);
    return all;
  }

  /** Movements of a material in the order of writing, without those that were taken back. */
  private static List<Movement> movements(Books books, String material) {
    List<Movement> all = new ArrayList<>(books.lots().ofMaterial(material));
    Set<Long> gone = new HashSet<>();
    for (Movement movement : all) {
      if (movement.reverses() != null) {
        gone.add(movement.reverses());
        gone.add(movement.id());
      }
    }
    all.removeIf(m -> gone.contains(m.id()));
    return all;
  }

  /** What was received of each lot. */
  private static Map<Long, Long> received(List<Movement> movements) {
    Map<Long, Long> received = new HashMap<>();
    for (Movement movement : movements) {
      if (movement.cause() == Cause.RECEIVED) {
        received.merge(movement.lot(), movement.change().units(), Long::sum);
      }
    }
    return received;
  }

  private static Entry entry(Movement movement, Lot lot, long received) {
    long units = movement.change().units();
    if (units < 0) {
      return new Entry.Out(-units, movement.cause().words());
    }
    long paid = lot.price() == null ? 0 : lot.price().minor();
    if (movement.cause() == Cause.RECEIVED) {
      return new Entry.In(units, paid);
    }
    if (movement.cause() == Cause.RETURNED && received > 0) {
      return new Entry.In(units, Math.round((double) paid * units / received));
    }
    return new Entry.In(units, 0);
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

  /** Reads how the studio values: {@code fifo} (house) or {@code average}. */
  public static Valuation.Method method(Books books) {
    String written = books.settings().value("slate.method").orElse("fifo");
    return switch (written) {
      case "fifo" -> Valuation.Method.FIFO;
      case "average" -> Valuation.Method.MOVING_AVERAGE;
      default -> throw new OutOfRange("slate.method", "'" + written + "'", "write fifo or average");
    };
  }
}

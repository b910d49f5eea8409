package pourwright.work;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import pourwright.cost.Valuation;
import pourwright.cost.Valuation.Entry;
import pourwright.stock.Cause;
import pourwright.stock.Movement;
import pourwright.stock.Price;

/**
 * The ledger of one material as the valuation takes it: receipts with what they cost, and what went
 * out with where it went. What was undone is left out on both sides, and what a batch gave back is
 * taken off what it drew, so that a correction leaves the costs as if it had never been.
 *
 * @param entries in the order of the ledger
 * @param movements the ledger's own line of each entry
 * @param withoutPrice lots that came in without a price; they are valued at nothing
 */
public record StockEntries(List<Entry> entries, List<Movement> movements, Set<Long> withoutPrice) {

  /** Keeps its own copies. */
  public StockEntries {
    entries = List.copyOf(entries);
    movements = List.copyOf(movements);
    withoutPrice = java.util.Collections.unmodifiableSet(new TreeSet<>(withoutPrice));
  }

  /** What an issue went into: {@code batch 12}, {@code waste}, {@code test}, {@code gift} … */
  public static String into(Movement movement) {
    return movement.batch() != null
        ? "batch " + movement.batch()
        : movement.cause() == Cause.COUNTED ? "missing at a count" : movement.cause().words();
  }

  /** The entries of a material, whichever lots it stood in. */
  public static StockEntries of(Books books, String material) {
    return of(books.lots().ofMaterial(material), books.lots().prices(material));
  }

  /** The same from movements in the order of writing and the prices of their lots. */
  static StockEntries of(List<Movement> movements, Map<Long, Price> prices) {
    return of(movements, prices, 0);
  }

  /**
   * The same for movements that came later, when so much was there.
   *
   * <p>When a count that had found more is taken back after that was used, it must have been there
   * all the same: a later count found it. It is entered where it was used, for nothing, and taken
   * off the later count.
   */
  static StockEntries of(List<Movement> movements, Map<Long, Price> prices, long before) {
    long there = before;
    long found = 0;
    Set<Long> gone = undone(movements);
    Map<String, Long> givenBack = givenBack(movements, gone);
    List<Entry> entries = new ArrayList<>();
    List<Movement> lines = new ArrayList<>();
    Set<Long> withoutPrice = new HashSet<>();
    for (Movement movement : movements) {
      long units = movement.change().units();
      if (gone.contains(movement.id()) || movement.cause() == Cause.RETURNED) {
        continue;
      }
      if (units > 0) {
        Price price = movement.cause() == Cause.RECEIVED ? prices.get(movement.lot()) : null;
        if (price == null && movement.cause() == Cause.RECEIVED) {
          withoutPrice.add(movement.lot());
        }
        long early = movement.cause() == Cause.COUNTED ? Math.min(found, units) : 0;
        found -= early;
        if (units > early) {
          entries.add(new Entry.In(units - early, price == null ? 0 : price.minor()));
          lines.add(movement);
          there += units - early;
        }
      } else {
        long out = takeOff(movement, givenBack);
        if (out > there) {
          entries.add(new Entry.In(out - there, 0));
          lines.add(movement);
          found += out - there;
          there = out;
        }
        there -= out;
        if (out > 0) {
          entries.add(new Entry.Out(out, into(movement)));
          lines.add(movement);
        }
      }
    }
    return new StockEntries(entries, lines, withoutPrice);
  }

  /** Movements that were reversed, and the reversals; a reversal of a reversal brings them back. */
  private static Set<Long> undone(List<Movement> movements) {
    Set<Long> reversed = new HashSet<>();
    Set<Long> gone = new HashSet<>();
    for (int i = movements.size() - 1; i >= 0; i--) {
      Movement movement = movements.get(i);
      Long reverses = movement.reverses();
      if (reverses != null) {
        gone.add(movement.id());
        if (!reversed.contains(movement.id())) {
          reversed.add(reverses);
        }
      }
    }
    gone.addAll(reversed);
    return gone;
  }

  private static Map<String, Long> givenBack(List<Movement> movements, Set<Long> gone) {
    Map<String, Long> back = new TreeMap<>();
    for (Movement movement : movements) {
      if (movement.cause() == Cause.RETURNED && !gone.contains(movement.id())) {
        back.merge(key(movement), movement.change().units(), Math::addExact);
      }
    }
    return back;
  }

  private static String key(Movement movement) {
    return movement.lot() + " " + movement.batch();
  }

  private static long takeOff(Movement movement, Map<String, Long> givenBack) {
    long out = -movement.change().units();
    long back = Math.min(out, givenBack.getOrDefault(key(movement), 0L));
    if (back > 0) {
      givenBack.merge(key(movement), -back, Math::addExact);
    }
    return out - back;
  }

  /** Values the material by the studio's method. */
  public Valuation valued(Valuation.Method method) {
    return Valuation.of(method, entries);
  }
}

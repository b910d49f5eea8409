package pourwright.work;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pourwright.batch.Carried;
import pourwright.material.UnitKind;
import pourwright.stock.Amount;
import pourwright.stock.Movement;

/**
 * What each batch cost in materials, to the cent. What is left of a pour and goes into another
 * takes its share along, by mass, of what was weighed into the first; counted things such as wicks
 * stay where they were drawn for.
 */
final class BatchCosts {
  private final Map<Long, Long> byBatch = new TreeMap<>();
  private final Map<Long, Melt> melts = new HashMap<>();

  /** What was weighed in, and what of it is still there. */
  private static final class Melt {
    private long units;
    private long minor;
  }

  /**
   * Adds what was drawn.
   *
   * @param batch what it was drawn for
   * @param drawn the ledger's line
   * @param units how much of it was not given back, in the ledger's small unit
   * @param minor what that cost, cents
   */
  void add(long batch, Movement drawn, long units, long minor) {
    byBatch.merge(batch, minor, Math::addExact);
    if (drawn.change().kind() == UnitKind.MASS) {
      Melt melt = melts.computeIfAbsent(batch, b -> new Melt());
      melt.units = Math.addExact(melt.units, units);
      melt.minor = Math.addExact(melt.minor, minor);
    }
  }

  /** Takes along what went from pour to pour, in the order in which it did. */
  void carry(List<Carried> all) {
    for (Carried carried : all) {
      Melt from = melts.get(carried.from());
      if (from == null || from.units <= 0) {
        continue;
      }
      Amount amount = carried.amount();
      long units = Math.min(from.units, amount.units());
      long share =
          BigInteger.valueOf(from.minor)
              .multiply(BigInteger.valueOf(units))
              .divide(BigInteger.valueOf(from.units))
              .longValueExact();
      Melt into = melts.computeIfAbsent(carried.into(), b -> new Melt());
      from.units -= units;
      from.minor -= share;
      into.units = Math.addExact(into.units, units);
      into.minor = Math.addExact(into.minor, share);
      byBatch.merge(carried.from(), -share, Math::addExact);
      byBatch.merge(carried.into(), share, Math::addExact);
    }
  }

  /** Cents by batch. */
  Map<Long, Long> all() {
    return byBatch;
  }
}

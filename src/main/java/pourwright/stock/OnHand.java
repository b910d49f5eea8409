package pourwright.stock;

import java.util.Collection;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is on hand, worked out from the movements and nothing else.
 *
 * @param byLot amount by lot number; a lot that was emptied stands at none
 */
public record OnHand(Map<Long, Amount> byLot) {

  /** Keeps its own unmodifiable copy. */
  public OnHand {
    byLot = Collections.unmodifiableMap(new TreeMap<>(byLot));
  }

  /** Adds every movement to its lot. */
  public static OnHand derivedFrom(Collection<Movement> movements) {
    Map<Long, Amount> sums = new TreeMap<>();
    for (Movement movement : movements) {
      sums.merge(movement.lot(), movement.change(), Amount::plus);
    }
    return new OnHand(sums);
  }
}

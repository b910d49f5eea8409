package pourwright.work;

import java.util.Collection;
import java.util.List;
import java.util.Map;

/** Money as it came and went, and the prices that were agreed. */
public interface MoneyBook {

  /** Everything in the order of writing, undone deeds left out. */
  List<MoneyFact> all();

  /** What belongs to an order, in the order of writing. */
  List<MoneyFact> of(String order);

  /** The price of one piece that was agreed last, by line; lines without one are left out. */
  Map<Long, Long> agreed(Collection<Long> lines);

  /** What a deed wrote. */
  List<MoneyFact> ofDeed(long deed);

  /** Writes one and gives it back with its number. Only inside a write. */
  MoneyFact append(MoneyFact fact, Deed deed);
}

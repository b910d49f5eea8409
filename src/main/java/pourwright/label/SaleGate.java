package pourwright.label;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether a label may be printed for sale. Anything missing or open leaves only TEST, NOT FOR SALE.
 *
 * @param missing inputs that are missing, in words
 * @param notProved ways in which this combination is not proved for sale
 * @param waits waits still open
 * @param holds holds on a lot, the design or the mark
 * @param stops reasons of the classification against supply
 */
public record SaleGate(
    List<String> missing,
    List<String> notProved,
    List<String> waits,
    List<String> holds,
    List<String> stops) {
  /** Copies the lists. */
  public SaleGate {
    missing = List.copyOf(missing);
    notProved = List.copyOf(notProved);
    waits = List.copyOf(waits);
    holds = List.copyOf(holds);
    stops = List.copyOf(stops);
  }

  /** Nothing stands against it. */
  public static SaleGate open() {
    return new SaleGate(List.of(), List.of(), List.of(), List.of(), List.of());
  }

  /** True when a sale label may be printed. */
  public boolean isOpen() {
    return reasons().isEmpty();
  }

  /** Everything that stands against a sale label, in words. */
  public List<String> reasons() {
    List<String> reasons = new ArrayList<>();
    missing.forEach(m -> reasons.add("missing: " + m));
    notProved.forEach(n -> reasons.add("not proved for sale: " + n));
    waits.forEach(w -> reasons.add("still waiting: " + w));
    holds.forEach(h -> reasons.add("on hold: " + h));
    reasons.addAll(stops);
    return reasons;
  }
}

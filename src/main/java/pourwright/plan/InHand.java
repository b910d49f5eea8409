package pourwright.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import pourwright.stock.Shelf;

/**
 * What there is already.
 *
 * @param candles finished candles that may be sold, by design
 * @param vessels vessels ready to be filled, or already on their way there, by kind
 * @param shelves lots of each material, by code
 * @param today the studio's day: expired lots are passed over
 */
public record InHand(
    Map<String, Integer> candles,
    Map<VesselKind, Integer> vessels,
    Map<String, List<Shelf>> shelves,
    LocalDate today) {
  /** Copies. */
  public InHand {
    candles = Map.copyOf(candles);
    vessels = Map.copyOf(vessels);
    shelves = Map.copyOf(shelves);
  }

  /** Nothing at all. */
  public static InHand nothing(LocalDate today) {
    return new InHand(Map.of(), Map.of(), Map.of(), today);
  }
}

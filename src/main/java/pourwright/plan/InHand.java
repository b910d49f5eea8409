package pourwright.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import pourwright.stock.Shelf;

/**
 * What there is already.
 *
 * @param candles finished candles that may be sold, by design
 * @param vessels vessels ready to be filled, by kind
 * @param running casts under way, the furthest first
 * @param poured pours under way, the furthest first
 * @param shelves lots of each material, by code
 * @param today the studio's day: expired lots are passed over
 */
public record InHand(
    Map<String, Integer> candles,
    Map<VesselKind, Integer> vessels,
    List<RunningCast> running,
    List<RunningPour> poured,
    Map<String, List<Shelf>> shelves,
    LocalDate today) {
  /** Copies. */
  public InHand {
    candles = Map.copyOf(candles);
    vessels = Map.copyOf(vessels);
    running = List.copyOf(running);
    poured = List.copyOf(poured);
    shelves = Map.copyOf(shelves);
  }

  /** What there is, with no pour under way. */
  public InHand(
      Map<String, Integer> candles,
      Map<VesselKind, Integer> vessels,
      List<RunningCast> running,
      Map<String, List<Shelf>> shelves,
      LocalDate today) {
    this(candles, vessels, running, List.of(), shelves, today);
  }

  /** What there is, with nothing under way. */
  public InHand(
      Map<String, Integer> candles,
      Map<VesselKind, Integer> vessels,
      Map<String, List<Shelf>> shelves,
      LocalDate today) {
    this(candles, vessels, List.of(), shelves, today);
  }

  /** Nothing at all. */
  public static InHand nothing(LocalDate today) {
    return new InHand(Map.of(), Map.of(), Map.of(), today);
  }
}

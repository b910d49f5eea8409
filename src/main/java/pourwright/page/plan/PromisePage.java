package pourwright.page.plan;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/**
 * When a wish can leave: finished strings.
 *
 * @param form what was typed
 * @param candles candles by code
 * @param state {@code none}, {@code quick}, {@code running} or {@code done}
 * @param lead the date, in one sentence
 * @param facts what else is to be said of it
 * @param gains what would make it earlier
 * @param way the whole way, step by step
 * @param sum the way added up
 */
public record PromisePage(
    Form form,
    Map<String, String> candles,
    String state,
    String lead,
    List<String> facts,
    List<String> gains,
    List<Leg> way,
    String sum) {
  /** Keeps its own copies; the candles stay in their order. */
  public PromisePage {
    facts = List.copyOf(facts);
    gains = List.copyOf(gains);
    way = List.copyOf(way);
  }

  /** One step or wait of the way. */
  public record Leg(String words, String length) {}
}

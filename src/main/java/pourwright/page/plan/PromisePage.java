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
 * @param proof why no date may be promised yet
 * @param lead the date, in one sentence; that of the making alone where none may be promised
 * @param facts what else is to be said of it
 * @param gains what would make it earlier
 * @param way the whole way, step by step
 * @param sum the way added up
 */
public record PromisePage(
    Form form,
    Map<String, String> candles,
    String state,
    Proof proof,
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

  /**
   * What stands between the candle and a promise.
   *
   * @param why it is not proved for sale; empty where it is
   * @param missing what is still missing before it may be called proved
   */
  public record Proof(String why, List<String> missing) {
    /** Keeps its own copy. */
    public Proof {
      missing = List.copyOf(missing);
    }

    /** True where no date may be promised. */
    public boolean isMissing() {
      return !why.isEmpty();
    }
  }

  /** One step or wait of the way. */
  public record Leg(String words, String length) {}
}

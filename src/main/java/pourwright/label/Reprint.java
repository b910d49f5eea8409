package pourwright.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pourwright.hazard.Classification;

/** Which labels must be printed again after a sheet changed. */
public final class Reprint {
  private Reprint() {}

  /**
   * A label whose words or signs changed.
   *
   * @param candle code
   * @param before classes before
   * @param now classes now
   */
  public record Changed(String candle, List<String> before, List<String> now) {}

  /** Candles whose print differs, in the order of the newer map; new candles are left out. */
  public static List<Changed> needed(
      Map<String, Classification> before, Map<String, Classification> now) {
    List<Changed> changed = new ArrayList<>();
    now.forEach(
        (candle, found) -> {
          Classification was = before.get(candle);
          if (was != null && !was.print().equals(found.print())) {
            changed.add(new Changed(candle, was.classes(), found.classes()));
          }
        });
    return changed;
  }
}

package pourwright.burn;

import java.util.ArrayList;
import java.util.List;

/** What to doubt in a simulated burn: results outside the range that the model was checked for. */
final class Doubts {
  private static final String RANGE = ", outside the range this model was checked for";

  private Doubts() {}

  static BurnResult with(Burn burn, BurnResult r, boolean ranOut) {
    List<String> doubts = new ArrayList<>();
    if (ranOut) {
      doubts.add("the wax was used up before the end; the flames were put out then");
    }
    for (BurningWick wick : burn.wicks()) {
      outside(doubts, "a burn rate of %.1f g/h", wick.gramsPerHour(), 3, 8);
    }
    if (!r.pool().isEmpty()) {
      BurnResult.Pool last = r.pool().get(r.pool().size() - 1);
      outside(doubts, "a pool %.1f mm deep", last.depthMm(), 5, 15);
      if (!Double.isNaN(last.meanC())) {
        outside(doubts, "a pool at %.0f °C", last.meanC(), 55, 95);
        if (last.meanC() > 120) {
          doubts.add("the pool is hotter than wax should be in a candle");
        }
      }
    }
    outside(doubts, "an outer wall at %.0f °C", r.wallMaxC(), 35, 65);
    outside(doubts, "%.1f %% of the heat coming back", 100 * r.returnedShare(), 5, 15);
    if (r.isTunnelling()) {
      doubts.add(
          "part of the surface stays hard: it may tunnel, and the model still lowers the wax evenly");
    }
    return new BurnResult(
        r.pool(),
        r.fullPoolH(),
        r.wallMaxC(),
        r.baseMaxC(),
        r.remainingWaxG(),
        r.returnedShare(),
        r.balance(),
        r.effort(),
        List.copyOf(doubts));
  }

  private static void outside(
      List<String> doubts, String words, double value, double low, double high) {
    if (value < low || value > high) {
      doubts.add(String.format(java.util.Locale.ROOT, words, value) + RANGE);
    }
  }
}

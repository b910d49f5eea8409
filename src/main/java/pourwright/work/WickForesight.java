package pourwright.work;

import java.util.Locale;
import java.util.function.DoubleFunction;
import pourwright.burn.Burn;
import pourwright.burn.BurnResult;
import pourwright.burn.Simulation;
import pourwright.quantity.Counted;
import pourwright.wick.WickMemory.Proposal;

/**
 * What wick memory and simulation foresee of a wick that was not burnt in this candle yet: the
 * candle simulated at the burn rate that memory holds likely and at both ends of its interval.
 *
 * @param share of the simulations, the likely one counted twice, in which the whole surface melts
 *     within four hours and not too deep; 0 to 1
 * @param rate what memory says of its burn rate, in words
 * @param simulated what the likely simulation came to, in words
 */
public record WickForesight(double share, String rate, String simulated) {
  /** House: a cycle, in which the whole surface has to melt. */
  private static final double CYCLE_H = 4;

  /**
   * Deepest pool that is usual, from the handbook's plausible 5 to 15 mm, and the quarter by which
   * a simulated depth may be off.
   */
  private static final double DEEPEST_MM = 15 * 1.25;

  /**
   * Foresees.
   *
   * @param memory what is known of the wick's rate, g/h
   * @param candle the candle with a wick of so many g/h, over four hours
   * @param ends whether the ends of the interval are simulated too; without them the likely rate
   *     alone decides
   */
  public static WickForesight of(Proposal memory, DoubleFunction<Burn> candle, boolean ends) {
    BurnResult likely = Simulation.run(candle.apply(memory.value()));
    double share = good(likely);
    if (ends) {
      double low = good(Simulation.run(candle.apply(memory.low())));
      double high = good(Simulation.run(candle.apply(memory.high())));
      share = (low + 2 * share + high) / 4;
    }
    String rate =
        String.format(
            Locale.ROOT,
            "%.1f g/h (%.1f to %.1f), from %s",
            memory.value(),
            memory.low(),
            memory.high(),
            Counted.of(memory.tests(), "test", "tests"));
    return new WickForesight(share, rate, words(likely));
  }

  private static double good(BurnResult result) {
    boolean full = result.fullPoolH() <= CYCLE_H; // not a number is never full
    return full && deepest(result) <= DEEPEST_MM ? 1 : 0;
  }

  private static double deepest(BurnResult result) {
    return result.pool().stream().mapToDouble(BurnResult.Pool::depthMm).max().orElse(0);
  }

  private static String words(BurnResult result) {
    String full =
        Double.isNaN(result.fullPoolH())
            ? "not full in 4 h"
            : String.format(Locale.ROOT, "full after %.1f h", result.fullPoolH());
    return String.format(Locale.ROOT, "%s, %.0f mm deep", full, deepest(result));
  }
}

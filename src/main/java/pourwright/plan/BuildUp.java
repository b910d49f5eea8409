package pourwright.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Building up stock for a season as evenly as the demand allows: the lowest steady number a week
 * that is never short, then the lowest from the tightest week on, and so on. This is the taut
 * string over the summed demand, from below.
 *
 * @param perWeek pieces to make in each week
 * @param stockMost most pieces on the shelf at a week's end
 * @param troubles what cannot be kept: a week that asks for more than the molds give, a shelf that
 *     is too small
 */
public record BuildUp(List<Double> perWeek, double stockMost, List<String> troubles) {
  /** Keeps its own copies. */
  public BuildUp {
    perWeek = List.copyOf(perWeek);
    troubles = List.copyOf(troubles);
  }

  /**
   * Plans the weeks.
   *
   * @param demand pieces asked for in each week
   * @param onHand pieces there are now
   * @param mostAWeek pieces the molds and hands give in a week
   * @param shelf pieces that the shelf holds
   */
  public static BuildUp of(double[] demand, double onHand, double mostAWeek, double shelf) {
    List<Double> make = new ArrayList<>();
    List<String> troubles = new ArrayList<>();
    double stock = onHand;
    double most = onHand;
    for (int week = 0; week < demand.length; week++) {
      double rate = steady(demand, week, stock);
      if (rate > mostAWeek + 1e-9) {
        troubles.add(
            "week "
                + (week + 1)
                + " needs "
                + Math.ceil(rate)
                + " pieces; "
                + mostAWeek
                + " can be made");
        rate = mostAWeek;
      }
      make.add(rate);
      stock += rate - demand[week];
      most = Math.max(most, stock);
    }
    if (most > shelf) {
      troubles.add("the shelf holds " + shelf + " pieces and " + Math.ceil(most) + " are built up");
    }
    return new BuildUp(make, most, troubles);
  }

  /** The lowest steady number a week from here on that is never short. */
  private static double steady(double[] demand, int from, double stock) {
    double sum = 0;
    double rate = 0;
    for (int week = from; week < demand.length; week++) {
      sum += demand[week];
      rate = Math.max(rate, (sum - stock) / (week - from + 1));
    }
    return rate;
  }
}

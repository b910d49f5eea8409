package pourwright.page.stockroom;

import java.util.List;
import pourwright.page.Form;

/** What the pages of market days show: finished strings. */
public final class MarketPages {
  private MarketPages() {}

  /**
   * All market days, and packing for the next.
   *
   * @param form what was typed
   * @param candles what may be taken
   * @param days past and present ones, newest first
   */
  public record Days(Form form, List<Candle> candles, List<Day> days) {}

  /**
   * A candle that may be taken.
   *
   * @param advice how many earlier days speak for, or an empty string
   */
  public record Candle(String code, String name, int there, String advice) {}

  /** A day in the list. */
  public record Day(
      String path, String name, String state, String pieces, String money, String notes) {}

  /**
   * One day.
   *
   * @param packed whether it waits to be counted back
   * @param lines candle by candle
   * @param facts what is known of it
   */
  public record One(
      Form form, String name, String path, boolean packed, List<Line> lines, List<String> facts) {}

  /**
   * A candle of the day.
   *
   * @param line number of the order line
   * @param taken how many were packed
   * @param sold how many were sold, or an empty string before the evening
   */
  public record Line(long line, String name, String price, int taken, String sold) {}
}

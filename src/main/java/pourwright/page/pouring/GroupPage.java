package pourwright.page.pouring;

import java.util.List;
import pourwright.page.Form;

/**
 * A day's candles in pitchers and melts: finished strings.
 *
 * @param form what was typed
 * @param rows candles to choose from, with how many orders still want
 * @param summary how many pitchers, melts and washes; empty while nothing is worked out
 * @param melts the melts in their order
 */
public record GroupPage(Form form, List<Row> rows, String summary, List<Melt> melts) {
  /** A candle, and the field for how many. */
  public record Row(String field, String name, String wanted) {}

  /** One filling of the melter. */
  public record Melt(String title, List<Pitcher> pitchers) {}

  /**
   * One pitcher.
   *
   * @param title what goes in
   * @param candles what is filled
   * @param window at what temperature
   * @param left where the rest goes
   * @param of candles as "bollard-rain:2,ferry-rain:1", to begin the pour with
   * @param residue what stays in it, in g
   */
  public record Pitcher(
      String title, String candles, String window, String left, String of, String residue) {}
}

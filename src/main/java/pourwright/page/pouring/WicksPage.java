package pourwright.page.pouring;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.page.Form;
import pourwright.page.board.Drawing;

/**
 * Which wicks, and how many: finished strings.
 *
 * @param form which candle is looked at
 * @param candles candles by code
 * @param name the candle; empty while none is chosen
 * @param template where its template is printed
 * @param version of the candle's card
 * @param standing where the card has the wicks now
 * @param beside what heat is held against
 * @param wicks what is known of each wick
 * @param counts the layouts by count
 */
public record WicksPage(
    Form form,
    Map<String, String> candles,
    String name,
    String template,
    String version,
    String standing,
    String beside,
    List<Wick> wicks,
    List<Count> counts) {

  /** A wick: its name, burn rate, reach, what they stand on, and the figure on its card. */
  public record Wick(String name, String rate, String reach, String standsOn, String written) {}

  /**
   * A number of wicks.
   *
   * @param title as "2 wicks"
   * @param count how many
   * @param lines reach, heat, and what to know
   * @param flag a warning, or empty
   * @param drawing the layout; null when none fits
   * @param free a layout without symmetry; null where it gains nothing worth it
   */
  public record Count(
      String title,
      int count,
      List<String> lines,
      String flag,
      @Nullable Drawing drawing,
      @Nullable Drawing free) {}
}

package pourwright.page.pouring;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/**
 * The first page of the bench: pours under way and a form to begin one. Finished strings.
 *
 * @param purpose what is done here
 * @param form what was typed
 * @param candles designs by code
 * @param running pours under way
 * @param plaster whether a candle of plaster is laid out
 */
public record PouringPage(
    String purpose, Form form, Map<String, String> candles, List<Row> running, boolean plaster) {

  /** A pour under way. */
  public record Row(String link, String what, String since) {}
}

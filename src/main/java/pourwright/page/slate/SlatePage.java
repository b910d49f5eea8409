package pourwright.page.slate;

import java.util.List;
import pourwright.page.Form;

/**
 * The slate of all candles: finished strings.
 *
 * @param purpose what is done here
 * @param form the house's numbers as they are or were typed
 * @param currency the letters of the currency all money of the rows is in
 * @param rows candles, what earns most per hour of hands first
 * @param best which pays best, in sentences
 */
public record SlatePage(
    String purpose, Form form, String currency, List<Row> rows, List<String> best) {

  /** A candle. */
  public record Row(
      String link,
      String name,
      String cost,
      String price,
      String ofPrice,
      String ofCost,
      String perHour,
      String perMoldDay) {}
}

package pourwright.page.stockroom;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import pourwright.page.Desk;

/**
 * What the page shows: finished strings.
 *
 * @param purpose what is done here
 * @param day today, as the studio writes dates
 */
public record StockroomPage(String purpose, String day) {
  static StockroomPage of(String purpose, Desk desk) {
    LocalDate today = LocalDate.now(desk.clock().withZone(desk.zone()));
    DateTimeFormatter full =
        DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL).withLocale(desk.locale());
    return new StockroomPage(purpose, today.format(full));
  }
}

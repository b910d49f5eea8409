package pourwright.page.orders;

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
public record OrdersPage(String purpose, String day) {
  static OrdersPage of(String purpose, Desk desk) {
    LocalDate today = LocalDate.now(desk.clock().withZone(desk.zone()));
    DateTimeFormatter full =
        DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL).withLocale(desk.locale());
    return new OrdersPage(purpose, today.format(full));
  }
}

package pourwright.page.orders;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import pourwright.order.Order;
import pourwright.page.Form;

/**
 * What the page shows: finished strings.
 *
 * @param purpose what is done here
 * @param rows orders, newest first
 * @param next where the next ones begin, empty at the end
 * @param form the question for a date
 * @param candles names by code
 */
public record OrdersPage(
    String purpose, List<Row> rows, String next, Form form, Map<String, String> candles) {

  /**
   * One order.
   *
   * @param late true when it is open and its day is over
   * @param pick where it is picked
   */
  public record Row(
      String number,
      String channel,
      String state,
      String pieces,
      String due,
      boolean late,
      String pick) {
    static Row of(Order order, LocalDate today) {
      LocalDate due = order.dueOn().orElse(null);
      boolean late = due != null && order.state().wantsPieces() && due.isBefore(today);
      return new Row(
          order.number(),
          order.channel(),
          order.state().words(),
          "" + order.pieces(),
          due == null ? "no day" : due.toString(),
          late,
          PickDesk.path(order.number()));
    }
  }
}

package pourwright.work;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;

/** What was asked for in past months, from the order book. */
public final class Sales {
  private static final int ORDERS_AT_ONCE = 500;

  private Sales() {}

  /**
   * Pieces by month of their due day, from the first month with an order to the last whole month;
   * months between without one count 0. Cancelled orders and lines without a day do not count.
   *
   * @param candle code of the candle; null for all together
   * @param today the month this day lies in is not whole and left out
   */
  public static double[] byMonth(Books books, @Nullable String candle, LocalDate today) {
    Map<YearMonth, Integer> months = new TreeMap<>();
    String after = null;
    do {
      PageOf<Order> page = books.orders().list(null, after, ORDERS_AT_ONCE);
      page.items().stream()
          .filter(order -> order.state() != OrderState.CANCELLED)
          .flatMap(order -> order.lines().stream())
          .filter(line -> candle == null || line.design().equals(candle))
          .forEach(line -> count(line, today, months));
      after = page.next();
    } while (after != null);
    if (months.isEmpty()) {
      return new double[0];
    }
    YearMonth first = months.keySet().iterator().next();
    double[] sold = new double[(int) first.until(YearMonth.from(today), ChronoUnit.MONTHS)];
    months.forEach((month, n) -> sold[(int) first.until(month, ChronoUnit.MONTHS)] = n);
    return sold;
  }

  private static void count(OrderLine line, LocalDate today, Map<YearMonth, Integer> months) {
    LocalDate due = line.dueOn();
    if (due != null && YearMonth.from(due).isBefore(YearMonth.from(today))) {
      months.merge(YearMonth.from(due), line.quantity(), Integer::sum);
    }
  }
}

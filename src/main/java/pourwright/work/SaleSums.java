package pourwright.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.cost.MoneyKind;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.quantity.Money;

/**
 * What an order comes to and what was paid of it.
 *
 * @param order the order
 * @param currency of all amounts
 * @param lines each with its price
 * @param money what came and went for it
 */
public record SaleSums(Order order, String currency, List<Line> lines, List<MoneyFact> money) {
  private static final double MINOR = 100;

  /** What lessens what an order still owes. */
  private static final Set<MoneyKind> COUNTS_AS_PAID =
      Set.of(MoneyKind.PAID, MoneyKind.DEPOSIT, MoneyKind.VOUCHER_USED, MoneyKind.COMMISSION);

  /** Keeps its own copies. */
  public SaleSums {
    lines = List.copyOf(lines);
    money = List.copyOf(money);
  }

  /**
   * A line.
   *
   * @param id number of the order line
   * @param name the candle
   * @param eachMinor price of one in cents, null where none is known
   * @param agreed whether it was agreed for this line; else it is the list's
   */
  public record Line(long id, String name, int pieces, @Nullable Long eachMinor, boolean agreed) {
    /** Price of the line; 0 where none is known. */
    public long sumMinor() {
      Long each = eachMinor;
      return each == null ? 0 : each * pieces;
    }
  }

  /** Reads an order's money; empty when there is no such order. */
  public static Optional<SaleSums> of(Books books, String number) {
    return books.orders().order(number).map(order -> of(books, order));
  }

  private static SaleSums of(Books books, Order order) {
    Map<OrderLine.Key, Long> ids = books.orders().lineIds(order.number());
    Map<Long, Long> agreed = books.money().agreed(ids.values());
    PriceList prices = PriceList.of(books);
    Map<Long, Integer> sold = sold(books, order, ids);
    List<Line> lines = new ArrayList<>();
    for (OrderLine line : order.lines()) {
      long id = ids.getOrDefault(line.key(), 0L);
      String name =
          books
              .cards()
              .current(Drawers.CANDLE, line.design())
              .map(c -> c.body().name())
              .orElse(line.design());
      Long price = agreed.get(id);
      boolean isAgreed = price != null;
      if (price == null) {
        price =
            prices.in(line.design(), order.channel()).map(p -> Math.round(p * MINOR)).orElse(null);
      }
      lines.add(new Line(id, name, sold.getOrDefault(id, line.quantity()), price, isAgreed));
    }
    String currency = books.settings().value("currency").orElse("EUR");
    return new SaleSums(order, currency, lines, books.money().of(order.number()));
  }

  /** What was sold of goods that went out unsold: to a stall, or left with a shop. */
  private static Map<Long, Integer> sold(Books books, Order order, Map<OrderLine.Key, Long> ids) {
    boolean wentOut =
        order.channel().equals(LeaveWithShop.CHANNEL)
            || (order.channel().equals(MarketDay.CHANNEL) && order.state() == OrderState.SENT);
    Map<Long, Integer> sold = new HashMap<>();
    if (wentOut) {
      Map<Long, Integer> filled = books.orders().filled(ids.values());
      for (long id : ids.values()) {
        int out = books.recalls().pickedForLine(id).size();
        sold.put(id, Math.max(0, filled.getOrDefault(id, 0) - out));
      }
    }
    return sold;
  }

  /** All lines together, cents. */
  public long totalMinor() {
    return lines.stream().mapToLong(Line::sumMinor).sum();
  }

  /** What was paid, deposits and vouchers among it, less what was given back. */
  public long paidMinor() {
    long paid = 0;
    for (MoneyFact fact : money) {
      MoneyKind kind = fact.kind();
      if (COUNTS_AS_PAID.contains(kind)) {
        paid += fact.minor();
      } else if (kind == MoneyKind.REFUND) {
        paid -= fact.minor();
      }
    }
    return paid;
  }

  /** Cents as an amount with its currency. */
  public String words(long minor) {
    return new Money(minor, currency).amount() + " " + currency;
  }
}

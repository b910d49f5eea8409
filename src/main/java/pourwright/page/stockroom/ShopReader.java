package pourwright.page.stockroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.quantity.Counted;
import pourwright.quantity.Money;
import pourwright.work.Books;
import pourwright.work.Drawers;
import pourwright.work.LeaveWithShop;
import pourwright.work.MoneyFact;
import pourwright.work.SaleSums;

/** Turns goods left with shops into the strings of their pages. */
final class ShopReader {
  private static final int LATEST = 400;
  private final Desk desk;

  ShopReader(Desk desk) {
    this.desk = desk;
  }

  private static Map<String, String> names(Books books) {
    Map<String, String> names = new TreeMap<>();
    books.cards().all(Drawers.CANDLE).forEach(c -> names.put(c.code(), c.body().name()));
    return names;
  }

  ShopPages.All all(Form form) {
    return desk.studio()
        .look(
            books -> {
              Map<String, Integer> there = books.recalls().counts("Rested");
              List<ShopPages.Candle> candles = new ArrayList<>();
              names(books)
                  .forEach(
                      (code, name) -> {
                        int free = there.getOrDefault(code, 0);
                        if (free > 0) {
                          candles.add(new ShopPages.Candle(code, name, free));
                        }
                      });
              List<ShopPages.Left> left =
                  books.orders().list(null, null, LATEST).items().stream()
                      .filter(o -> o.channel().equals(LeaveWithShop.CHANNEL))
                      .map(o -> left(books, o))
                      .toList();
              return new ShopPages.All(form, candles, left);
            });
  }

  private static ShopPages.Left left(Books books, Order order) {
    int still = books.recalls().pickedFor(order.number()).size();
    return new ShopPages.Left(
        ShopDesk.path(order.number()),
        shop(order.number()),
        still == 0
            ? "nothing is there any more"
            : Counted.of(
                still,
                "of " + order.pieces() + " is there",
                "of " + order.pieces() + " are there"));
  }

  private static String shop(String number) {
    return number.startsWith(LeaveWithShop.HEAD)
        ? number.substring(LeaveWithShop.HEAD.length())
        : number;
  }

  Optional<ShopPages.One> one(String number, Form form) {
    return desk.studio()
        .look(
            books ->
                books
                    .orders()
                    .order(number)
                    .filter(o -> o.channel().equals(LeaveWithShop.CHANNEL))
                    .flatMap(
                        order ->
                            SaleSums.of(books, number).map(sums -> one(books, order, sums, form))));
  }

  private ShopPages.One one(Books books, Order order, SaleSums sums, Form form) {
    Map<Long, Integer> left = new TreeMap<>();
    Map<OrderLine.Key, Long> ids = books.orders().lineIds(order.number());
    order.lines().forEach(l -> left.put(ids.getOrDefault(l.key(), 0L), l.quantity()));
    List<ShopPages.Line> lines = new ArrayList<>();
    int all = 0;
    for (SaleSums.Line line : sums.lines()) {
      int still = books.recalls().pickedForLine(line.id()).size();
      all += still;
      Long each = line.eachMinor();
      lines.add(
          new ShopPages.Line(
              line.id(),
              line.name(),
              each == null ? "" : sums.words(each),
              left.getOrDefault(line.id(), 0),
              line.pieces(),
              still));
    }
    List<String> facts = new ArrayList<>();
    for (MoneyFact fact : sums.money()) {
      if (fact.line() == null) {
        facts.add(
            desk.day(fact.day())
                + ": "
                + fact.kind().words()
                + " "
                + new Money(fact.minor(), sums.currency()).amount()
                + " "
                + sums.currency());
      }
    }
    facts.add("Sold for " + sums.words(sums.totalMinor()) + ".");
    facts.add("The shop still owes " + sums.words(sums.totalMinor() - sums.paidMinor()) + ".");
    return new ShopPages.One(
        form,
        shop(order.number()),
        ShopDesk.path(order.number()),
        all > 0,
        lines,
        facts,
        "/slate/order/" + ShopDesk.encoded(order.number()));
  }
}

package pourwright.page.stockroom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pourwright.cost.StallStock;
import pourwright.label.Language;
import pourwright.label.Texts;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.quantity.Counted;
import pourwright.quantity.Money;
import pourwright.quantity.OutOfRange;
import pourwright.work.Books;
import pourwright.work.Drawers;
import pourwright.work.MarketDay;
import pourwright.work.MoneyFact;
import pourwright.work.PaperSheet;
import pourwright.work.PaperSheet.Block;
import pourwright.work.PaperSheet.Column;
import pourwright.work.PaperSheet.How;
import pourwright.work.PriceList;
import pourwright.work.Reading;
import pourwright.work.Subject;

/** Turns market days into the strings of their pages and their stall sheet. */
final class MarketReader {
  private static final int DAYS_BACK = 400;

  /** What a piece is worth that came home, against its cost: the trip wears it. House. */
  private static final double HOME_WORTH = 0.9;

  private final Desk desk;

  MarketReader(Desk desk) {
    this.desk = desk;
  }

  private static boolean isMarket(Order order) {
    return order.channel().equals(MarketDay.CHANNEL) && order.number().startsWith("Market ");
  }

  MarketPages.Days days(Form form) {
    return desk.studio().look(books -> days(books, form));
  }

  private MarketPages.Days days(Books books, Form form) {
    List<Order> markets =
        books.orders().list(null, null, DAYS_BACK).items().stream()
            .filter(MarketReader::isMarket)
            .toList();
    Map<String, List<Double>> sold = soldBefore(books, markets);
    Map<String, Integer> there = books.recalls().counts("Rested");
    PriceList prices = PriceList.of(books);
    List<MarketPages.Candle> candles = new ArrayList<>();
    books
        .cards()
        .all(Drawers.CANDLE)
        .forEach(
            card -> {
              String code = card.code();
              int free = there.getOrDefault(code, 0);
              if (free > 0) {
                String advice = advice(prices, code, sold.getOrDefault(code, List.of()));
                candles.add(new MarketPages.Candle(code, card.body().name(), free, advice));
              }
            });
    return new MarketPages.Days(form, candles, markets.stream().map(m -> day(books, m)).toList());
  }

  /** What each past day sold of each candle. */
  private static Map<String, List<Double>> soldBefore(Books books, List<Order> markets) {
    Map<String, List<Double>> sold = new HashMap<>();
    for (Order market : markets) {
      if (market.state() == OrderState.SENT) {
        Map<OrderLine.Key, Long> ids = books.orders().lineIds(market.number());
        Map<Long, Integer> filled = books.orders().filled(ids.values());
        for (OrderLine line : market.lines()) {
          double pieces = filled.getOrDefault(ids.getOrDefault(line.key(), 0L), 0);
          sold.computeIfAbsent(line.design(), d -> new ArrayList<>()).add(pieces);
        }
      }
    }
    return sold;
  }

  /** The newsvendor's number from the days there were: docs/models/cost.md 6. */
  private static String advice(PriceList prices, String candle, List<Double> days) {
    Optional<Double> price = prices.in(candle, MarketDay.CHANNEL);
    Optional<Double> cost = prices.cost(candle);
    if (days.isEmpty() || price.isEmpty() || cost.isEmpty()) {
      return "";
    }
    try {
      StallStock stall = new StallStock(price.get(), cost.get(), HOME_WORTH * cost.get());
      long take = Math.round(stall.forPastDays(days));
      return "take " + take + ", by " + Counted.of(days.size(), "day", "days");
    } catch (OutOfRange e) {
      return e.sentence();
    }
  }

  private MarketPages.Day day(Books books, Order market) {
    String currency = books.settings().value("currency").orElse("EUR");
    long paid = 0;
    for (MoneyFact fact : books.money().of(market.number())) {
      paid += fact.kind() == pourwright.cost.MoneyKind.PAID ? fact.minor() : 0;
    }
    return new MarketPages.Day(
        MarketDesk.path(market.number()),
        market.number().substring(7),
        market.state() == OrderState.SENT ? "counted back" : "packed",
        market.pieces() + " taken",
        paid == 0 ? "" : new Money(paid, currency).amount() + " " + currency,
        notes(books, market.number()));
  }

  private static String notes(Books books, String number) {
    Optional<Reading> footfall =
        books.readings().newest(new Subject(Subject.Kind.ORDER, number), "footfall");
    return footfall
        .map(
            r ->
                (r.note() + (r.value() > 0 ? ", " + (long) r.value() + " came by" : ""))
                    .replaceFirst("^, ", ""))
        .orElse("");
  }

  Optional<MarketPages.One> one(String number, Form form) {
    return desk.studio()
        .look(
            books ->
                books
                    .orders()
                    .order(number)
                    .filter(MarketReader::isMarket)
                    .map(order -> one(books, order, form)));
  }

  private MarketPages.One one(Books books, Order order, Form form) {
    boolean packed = order.state() == OrderState.PICKED;
    Map<OrderLine.Key, Long> ids = books.orders().lineIds(order.number());
    Map<Long, Integer> filled = books.orders().filled(ids.values());
    PriceList prices = PriceList.of(books);
    Map<String, String> names = new TreeMap<>();
    books.cards().all(Drawers.CANDLE).forEach(c -> names.put(c.code(), c.body().name()));
    List<MarketPages.Line> lines = new ArrayList<>();
    for (OrderLine line : order.lines()) {
      long id = ids.getOrDefault(line.key(), 0L);
      lines.add(
          new MarketPages.Line(
              id,
              names.getOrDefault(line.design(), line.design()),
              prices.words(line.design(), MarketDay.CHANNEL),
              line.quantity(),
              packed ? "" : "" + filled.getOrDefault(id, 0)));
    }
    List<String> facts = new ArrayList<>();
    String currency = books.settings().value("currency").orElse("EUR");
    for (MoneyFact fact : books.money().of(order.number())) {
      facts.add(
          fact.kind().words() + ": " + new Money(fact.minor(), currency).amount() + " " + currency);
    }
    String notes = notes(books, order.number());
    if (!notes.isEmpty()) {
      facts.add(notes);
    }
    return new MarketPages.One(
        form, order.number(), MarketDesk.path(order.number()), packed, lines, facts);
  }

  /** The sheet that goes along: no server is at the market. */
  PaperSheet sheet(MarketPages.One day) {
    List<List<String>> rows =
        day.lines().stream()
            .map(l -> List.of(l.name(), l.price(), "" + l.taken(), "" + l.taken(), ""))
            .toList();
    List<Column> columns =
        List.of(
            new Column("Packed", 2.6, How.TICK),
            new Column("Price", 1.1, How.RIGHT),
            new Column("Taken", 0.7, How.RIGHT),
            new Column("Cross one for each sold", 2.9, How.TALLY),
            new Column("Home", 0.7, How.WRITE));
    List<List<String>> notes =
        List.of(
            List.of("Stall fee", "", "Weather", ""),
            List.of("Change taken", "", "People who came by", ""),
            List.of("Till in the evening", "", "Sold out at", ""));
    List<Column> written =
        List.of(
            Column.of("", 1),
            new Column("", 1, How.WRITE),
            Column.of("", 1),
            new Column("", 1, How.WRITE));
    String studio =
        desk.studio().look(books -> books.settings().value("studio.name")).orElse("Pourwright");
    return new PaperSheet(
        studio,
        desk.dayAndTime(desk.now()),
        "Stall sheet",
        day.name(),
        List.of(
            new Block.Grid(columns, rows),
            new Block.Grid(written, notes),
            new Block.Text("For the stall, to be read from a step away:", false),
            new Block.Sign(
                List.of(
                    Texts.of("burn-within-sight", Language.ENGLISH),
                    Texts.of("away-from-fire", Language.ENGLISH),
                    Texts.of("away-from-children", Language.ENGLISH)))));
  }
}

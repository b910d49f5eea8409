package pourwright.work;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import pourwright.cost.Accounts;
import pourwright.cost.Journal;

/** The books of a period as tables: what was sold, bought, is in stock, and had cost. */
public final class BookTables {
  private final Bookkeeping books;
  private final LocalDate from;
  private final LocalDate to;

  /**
   * @param from first day
   * @param to the day after the last
   */
  public BookTables(Bookkeeping books, LocalDate from, LocalDate to) {
    this.books = books;
    this.from = from;
    this.to = to;
  }

  /** All tables, the first an overview. */
  public List<SheetTable> all() {
    return List.of(overview(), sales(), purchases(), stock(), months(), accounts());
  }

  private BigDecimal money(long minor) {
    return books.journal().amount(minor);
  }

  /** Lines of the overview: what, and how many cents. */
  public Map<String, Long> sums() {
    Journal journal = books.journal();
    Map<String, Long> sums = new java.util.LinkedHashMap<>();
    sums.put("Sales", -journal.sum(Accounts.SALES, from, to));
    sums.put("Refunds", journal.sum(Accounts.REFUNDS, from, to));
    sums.put("Cost of goods sold", journal.sum(Accounts.SOLD, from, to));
    sums.put("Failed pieces", journal.sum(Accounts.FAILED, from, to));
    sums.put("Waste", journal.sum(Accounts.WASTE, from, to));
    sums.put("Missing at counts", journal.sum(Accounts.MISSING, from, to));
    sums.put("Tests", journal.sum(Accounts.TESTS, from, to));
    sums.put("Gifts", journal.sum(Accounts.GIFTS, from, to));
    sums.put("Fees", journal.sum(Accounts.FEES, from, to));
    sums.put("Postage", journal.sum(Accounts.POSTAGE, from, to));
    sums.put("Fixed costs", journal.sum(Accounts.FIXED, from, to));
    sums.put("Purchases of materials", purchased());
    sums.put("Stock at the end", stockValue());
    return sums;
  }

  private long purchased() {
    return books.purchases(from, to).stream()
        .map(Bookkeeping.Purchase::minor)
        .filter(Objects::nonNull)
        .mapToLong(Long::longValue)
        .sum();
  }

  /** What materials and pieces were worth after the last day, in cents. */
  public long stockValue() {
    return books.journal().sum(Accounts.STOCK, LocalDate.MIN, to);
  }

  private SheetTable overview() {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(List.of("From", from.toString()));
    rows.add(List.of("To, this day included", to.minusDays(1).toString()));
    rows.add(List.of("Currency", books.journal().currency()));
    sums().forEach((what, minor) -> rows.add(List.of(what, money(minor))));
    books.journal().notes().forEach(n -> rows.add(List.of("Note", n)));
    return new SheetTable("overview", List.of("what", "amount"), rows);
  }

  /** Every piece sold. */
  public SheetTable sales() {
    List<List<Object>> rows = new ArrayList<>();
    for (Bookkeeping.Sale sale : books.sales(from, to)) {
      Long price = sale.minor();
      rows.add(
          List.of(
              sale.day(),
              sale.order(),
              sale.channel(),
              sale.design(),
              sale.mark(),
              price == null ? "" : money(price),
              money(sale.costMinor())));
    }
    return new SheetTable(
        "sales",
        List.of("day", "order", "channel", "candle", "mark", "price", "cost of materials"),
        rows);
  }

  private SheetTable purchases() {
    List<List<Object>> rows = new ArrayList<>();
    for (Bookkeeping.Purchase bought : books.purchases(from, to)) {
      Long price = bought.minor();
      rows.add(
          List.of(
              bought.day(),
              bought.material(),
              bought.lot(),
              Objects.requireNonNullElse(bought.supplier(), ""),
              bought.amount().inUsualUnit(),
              bought.amount().usualUnit(),
              price == null ? "" : money(price)));
    }
    return new SheetTable(
        "purchases",
        List.of("day", "material", "lot", "supplier", "amount", "unit", "price"),
        rows);
  }

  /** What was in stock after the last day, by material, and the pieces. */
  public SheetTable stock() {
    List<List<Object>> rows = new ArrayList<>();
    books
        .journal()
        .balances(to)
        .forEach(
            (account, minor) -> {
              if (account.startsWith(Accounts.MATERIALS)) {
                rows.add(List.of(account.substring(Accounts.MATERIALS.length()), money(minor)));
              } else if (account.equals(Accounts.PIECES)) {
                rows.add(List.of("vessels, candles and what is being made", money(minor)));
              } else if (account.equals(Accounts.WITH_SHOPS)) {
                rows.add(List.of("candles left with shops", money(minor)));
              }
            });
    return new SheetTable("stock", List.of("what", "value"), rows);
  }

  private SheetTable months() {
    Map<YearMonth, long[]> months = new TreeMap<>();
    for (Bookkeeping.Sale sale : books.sales(from, to)) {
      long[] sums = months.computeIfAbsent(YearMonth.from(sale.day()), m -> new long[3]);
      Long price = sale.minor();
      sums[0]++;
      sums[1] += price == null ? 0 : price;
      sums[2] += sale.costMinor();
    }
    List<List<Object>> rows = new ArrayList<>();
    months.forEach(
        (month, sums) ->
            rows.add(List.of(month.toString(), sums[0], money(sums[1]), money(sums[2]))));
    return new SheetTable(
        "months", List.of("month", "pieces sold", "sales", "cost of goods sold"), rows);
  }

  private SheetTable accounts() {
    List<List<Object>> rows = new ArrayList<>();
    books
        .journal()
        .between(from, to)
        .balances(to)
        .forEach((account, minor) -> rows.add(List.of(account, money(minor))));
    return new SheetTable("accounts", List.of("account", "balance"), rows);
  }
}

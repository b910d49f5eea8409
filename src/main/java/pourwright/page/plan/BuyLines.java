package pourwright.page.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import pourwright.page.Form;
import pourwright.quantity.OutOfRange;
import pourwright.stock.PurchaseList;
import pourwright.work.PlaceOrder;

/** The lines of the buying page: parts with ; between, read and written. */
final class BuyLines {
  private static final int LINES_MAX = 200;

  private BuyLines() {}

  static <T> String lines(Iterable<T> all, Function<T, String> words) {
    StringBuilder text = new StringBuilder();
    all.forEach(one -> text.append(words.apply(one)).append('\n'));
    return text.toString();
  }

  static String line(PurchaseList.Need need) {
    String keeps = need.keepsG() < 1e8 ? "; " + number(need.keepsG()) : "";
    return need.material() + "; " + number(need.amountG()) + keeps;
  }

  static String line(PurchaseList.Offer offer) {
    return offer.material()
        + "; "
        + offer.supplier()
        + "; "
        + number(offer.packG())
        + "; "
        + number(offer.goods(1));
  }

  static String line(PlaceOrder.Line line) {
    return line.material() + "; " + line.supplier() + "; " + number(line.amount());
  }

  static List<PurchaseList.Need> needs(Form form) {
    return read(
        form,
        "needs",
        2,
        cells ->
            cells.length > 2 && !cells[2].isEmpty()
                ? new PurchaseList.Need(cells[0], amount(cells[1]), amount(cells[2]))
                : new PurchaseList.Need(cells[0], amount(cells[1])));
  }

  static List<PurchaseList.Offer> packs(Form form) {
    return read(
        form,
        "packs",
        4,
        cells ->
            new PurchaseList.Offer(
                cells[0], cells[1], amount(cells[2]), prices(cells), PurchaseList.NO_LIMIT));
  }

  /** The price of one pack, then steps such as {@code 3: 9.50}. */
  private static List<PurchaseList.PriceFrom> prices(String[] cells) {
    List<PurchaseList.PriceFrom> prices = new ArrayList<>();
    prices.add(new PurchaseList.PriceFrom(1, amount(cells[3])));
    for (int i = 4; i < cells.length; i++) {
      if (cells[i].isEmpty()) {
        continue;
      }
      String[] step = cells[i].split(":", 2);
      if (step.length < 2 || !step[0].strip().matches("[0-9]{1,5}")) {
        throw new OutOfRange(
            "price", "'" + cells[i] + "' is no price step", "write it as 3: 9.50, from 3 packs on");
      }
      prices.add(
          new PurchaseList.PriceFrom(Integer.parseInt(step[0].strip()), amount(step[1].strip())));
    }
    return prices;
  }

  static List<PurchaseList.Supplier> postage(Form form) {
    return read(
        form,
        "postage",
        2,
        cells ->
            new PurchaseList.Supplier(
                cells[0],
                amount(cells[1]),
                cells.length > 2 ? OptionalDouble.of(amount(cells[2])) : OptionalDouble.empty()));
  }

  static List<PlaceOrder.Line> ordered(Form form) {
    return read(
        form, "ordered", 3, cells -> new PlaceOrder.Line(cells[0], cells[1], amount(cells[2])));
  }

  private static <T> List<T> read(
      Form form, String field, int least, Function<String[], T> reader) {
    List<T> all = new ArrayList<>();
    String[] lines = form.value(field).split("\\R", LINES_MAX);
    for (int i = 0; i < lines.length; i++) {
      if (lines[i].isBlank()) {
        continue;
      }
      String[] cells = lines[i].strip().split("\\s*;\\s*", -1);
      try {
        if (cells.length < least) {
          throw new OutOfRange(field, "has " + cells.length + " parts", "put ; between " + least);
        }
        all.add(reader.apply(cells));
      } catch (OutOfRange e) {
        form.complain(field, "Line " + (i + 1) + ": " + e.sentence() + ", " + e.hint() + ".");
      }
    }
    return all;
  }

  private static double amount(String text) {
    try {
      return Double.parseDouble(text.replace(" ", "").replace(',', '.'));
    } catch (NumberFormatException e) {
      throw new OutOfRange("amount", "'" + text + "' is not a number", "write it as 1250 or 12.5");
    }
  }

  static String number(double value) {
    String text = String.format(Locale.ROOT, value < 100 ? "%.2f" : "%.0f", value);
    return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
  }
}

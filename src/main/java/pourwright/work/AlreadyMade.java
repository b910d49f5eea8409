package pourwright.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.order.ImportChanges;
import pourwright.order.OrderLine;
import pourwright.plan.InHand;
import pourwright.plan.VesselKind;

/**
 * What there is already for an order line that the shop changed or took off.
 *
 * @param picked candles put aside for it, or gone with it
 * @param candles candles of its design that are poured and free
 * @param vessels vessels for it that are cast and free
 */
public record AlreadyMade(int picked, int candles, int vessels) {

  /** In words, such as {@code already picked: 1; poured and free: 2; cast and free: none}. */
  public String words() {
    return "already picked: " + picked + "; poured and free: " + candles + "; cast: " + vessels;
  }

  /** For every line that a file changes or cancels. */
  static Map<OrderLine.Key, AlreadyMade> of(Books books, ImportChanges changes, LocalDate today) {
    List<OrderLine> lines = new ArrayList<>(changes.cancelled());
    changes.edited().forEach(edit -> lines.add(edit.before()));
    Map<OrderLine.Key, AlreadyMade> made = new LinkedHashMap<>();
    if (lines.isEmpty()) {
      return made;
    }
    CardBook book = Drawers.book(books);
    InHand inHand = WorkPlan.inHand(books, book, today);
    for (OrderLine line : lines) {
      Long id = books.orders().lineIds(line.order()).get(line.key());
      int picked = id == null ? 0 : books.orders().filled(List.of(id)).getOrDefault(id, 0);
      int vessels =
          book.all(CandleDesign.class).stream()
              .filter(c -> c.code().equals(line.design()))
              .findFirst()
              .map(c -> inHand.vessels().getOrDefault(VesselKind.of(c), 0))
              .orElse(0);
      int candles = inHand.candles().getOrDefault(line.design(), 0);
      made.put(line.key(), new AlreadyMade(picked, candles, vessels));
    }
    return made;
  }
}

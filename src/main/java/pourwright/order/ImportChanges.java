package pourwright.order;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import pourwright.quantity.Counted;

/**
 * What importing a file would change in the order book. The same file again changes nothing.
 *
 * @param added lines that are not in the book
 * @param edited lines whose quantity or date differs
 * @param cancelled lines in the book whose order is in the file without them
 * @param same lines that stand in both alike
 */
public record ImportChanges(
    List<OrderLine> added, List<Edit> edited, List<OrderLine> cancelled, List<OrderLine> same) {
  /**
   * A line that was changed in the shop.
   *
   * @param before as the book has it
   * @param after as the file has it
   */
  public record Edit(OrderLine before, OrderLine after) {
    /** What changed, in words. */
    public String words() {
      List<String> changes = new ArrayList<>();
      if (before.quantity() != after.quantity()) {
        changes.add(
            Counted.of(before.quantity(), "piece becomes ", "pieces become ") + after.quantity());
      }
      if (!Objects.equals(before.dueOn(), after.dueOn())) {
        changes.add("due " + before.dueOn() + " becomes " + after.dueOn());
      }
      return String.join(", ", changes);
    }
  }

  /** True when nothing would change. */
  public boolean isNothing() {
    return added.isEmpty() && edited.isEmpty() && cancelled.isEmpty();
  }

  /** Compares the book's open lines with those of a file. */
  public static ImportChanges between(Collection<OrderLine> book, Collection<OrderLine> file) {
    Map<OrderLine.Key, OrderLine> known = new TreeMap<>();
    book.forEach(l -> known.put(l.key(), l));
    List<OrderLine> added = new ArrayList<>();
    List<Edit> edited = new ArrayList<>();
    List<OrderLine> same = new ArrayList<>();
    Set<String> orders = new TreeSet<>();
    for (OrderLine line : file) {
      orders.add(line.order());
      OrderLine before = known.remove(line.key());
      if (before == null) {
        added.add(line);
      } else if (before.quantity() == line.quantity()
          && Objects.equals(before.dueOn(), line.dueOn())) {
        same.add(line);
      } else {
        edited.add(new Edit(before, line));
      }
    }
    List<OrderLine> cancelled =
        known.values().stream().filter(l -> orders.contains(l.order())).toList();
    return new ImportChanges(added, edited, cancelled, same);
  }
}

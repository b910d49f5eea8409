package pourwright.order;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;

/**
 * So many of one candle for one order.
 *
 * @param order the order's own number or name, as the shop writes it
 * @param design code of the candle
 * @param nth which of the order's lines for this candle it is, from 1: a shop may list one twice
 * @param quantity pieces wanted, 1 or more
 * @param dueOn last day it may leave the studio, null where none was promised
 * @param note what the customer asked for; never needed for making or tracing
 */
public record OrderLine(
    String order,
    String design,
    int nth,
    int quantity,
    @Nullable LocalDate dueOn,
    @Nullable String note) {
  /** Most pieces of one line that are believed. */
  public static final int QUANTITY_MAX = 10_000;

  /** Checks the range. */
  public OrderLine {
    Check.between("quantity", quantity, 1, QUANTITY_MAX);
    Check.between("nth", nth, 1, 100_000);
  }

  /** What the line is known by, the same whenever the shop exports it. */
  public Key key() {
    return new Key(order, design, nth);
  }

  /**
   * What a line is known by.
   *
   * @param order the order's number or name
   * @param design code of the candle
   * @param nth from 1
   */
  public record Key(String order, String design, int nth) implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      int byOrder = order.compareTo(other.order);
      int byDesign = byOrder != 0 ? byOrder : design.compareTo(other.design);
      return byDesign != 0 ? byDesign : Integer.compare(nth, other.nth);
    }

    /** As it is shown: order, candle and, from the second on, which. */
    public String words() {
      return order + " " + design + (nth > 1 ? " (" + nth + ")" : "");
    }
  }
}

package pourwright.order;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;

/**
 * An order as it stands.
 *
 * @param number the shop's own number or name
 * @param channel where it came from: shop, stall, wholesale …
 * @param customer a reference into the customers, who stand outside the ledger and can be erased;
 *     null for stall stock
 * @param state where it is on its way
 * @param lines what is wanted
 */
public record Order(
    String number,
    String channel,
    @Nullable String customer,
    OrderState state,
    List<OrderLine> lines) {
  /** Checks that the lines are this order's. */
  public Order {
    lines = List.copyOf(lines);
    if (number.isBlank()) {
      throw new OutOfRange("order", "an order without a number", "give it a number or a name");
    }
    for (OrderLine line : lines) {
      if (!line.order().equals(number)) {
        throw new OutOfRange(
            "order", "a line of " + line.order() + " stands in " + number, "move it");
      }
    }
  }

  /** The earliest day that any line was promised for. */
  public Optional<LocalDate> dueOn() {
    return lines.stream()
        .map(OrderLine::dueOn)
        .filter(Objects::nonNull)
        .min(Comparator.naturalOrder());
  }

  /** Pieces in all lines. */
  public int pieces() {
    return lines.stream().mapToInt(OrderLine::quantity).sum();
  }
}

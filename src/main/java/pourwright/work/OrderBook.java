package pourwright.work;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;

/** Orders and their lines as they stand now; every change is a fact of its own. */
public interface OrderBook {

  /** An order by its number. */
  Optional<Order> order(String number);

  /** Orders newest first, in one state when it is given. */
  PageOf<Order> list(@Nullable OrderState state, @Nullable String after, int limit);

  /** Orders that pieces must still be made or kept for, oldest first. */
  List<Order> wanting();

  /**
   * Pieces that stand picked or have left, by line, for those lines of the {@linkplain #wanting
   * wanting} orders that have any.
   */
  Map<OrderLine.Key, Integer> filledOfWanting();

  /** The given orders, those that are on file. */
  List<Order> of(Collection<String> numbers);

  /** Numbers of an order's lines, for picking and tracing. */
  Map<OrderLine.Key, Long> lineIds(String number);

  /** A line by its number, also when it was taken off its order since. */
  Optional<OrderLine> line(long id);

  /** Pieces that stand picked or have left, by line number. */
  Map<Long, Integer> filled(Collection<Long> lines);

  /** The deed that read a file in, by the file's fingerprint. */
  Optional<Deed> file(String fingerprint);

  /** What reading a file in has changed, as lines in words; by the deed. */
  List<OrderLine> linesOf(long deed);

  /** Adds a fact about an order, or the order itself. Only inside a write. */
  void put(Order order, Deed deed);

  /** Adds a line, or new terms of one; quantity and due date are what counts. */
  long put(OrderLine line, Deed deed);

  /** Takes a line off its order. Only inside a write. */
  void takeOff(OrderLine.Key line, Deed deed);

  /** Keeps that a file was read in. Only inside a write. */
  void keepFile(String fingerprint, String name, int lines, Deed deed);

  /** Works the kept state of the orders that a deed touched out anew. Only inside a write. */
  void retellOrdersOf(long deed);
}

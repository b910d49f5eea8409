package pourwright.work;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.plan.SeatClass;

/**
 * Classes in the books: an order of the channel {@code class} whose line counts seats; its hours,
 * what a seat does and who teaches are a setting of its name, written by the same deed.
 *
 * @param ahead open classes from today on, the next one first
 * @param orders numbers of all orders that are classes and still open
 */
public record Classes(List<SeatClass> ahead, Set<String> orders) {
  /** The channel of such an order. */
  public static final String CHANNEL = "class";

  private static final String NAME = "Class ";
  private static final String KEY = "class.";

  /** Copies. */
  public Classes {
    ahead = List.copyOf(ahead);
    orders = Set.copyOf(orders);
  }

  /** The classes that are open. */
  public static Classes of(Books books, LocalDate today) {
    List<SeatClass> ahead = new ArrayList<>();
    Set<String> orders = new HashSet<>();
    for (Order order : books.orders().wanting()) {
      if (order.channel().equals(CHANNEL)) {
        orders.add(order.number());
        if (order.state() == OrderState.OPEN) {
          read(books, order).filter(c -> !c.day().isBefore(today)).ifPresent(ahead::add);
        }
      }
    }
    ahead.sort(
        java.util.Comparator.comparing(SeatClass::day)
            .thenComparing(SeatClass::from)
            .thenComparing(SeatClass::order));
    return new Classes(ahead, orders);
  }

  /** One class by its number, whatever its state. */
  public static Optional<SeatClass> one(Books books, String number) {
    return books
        .orders()
        .order(number)
        .filter(o -> o.channel().equals(CHANNEL))
        .flatMap(o -> read(books, o));
  }

  /** What a class on a day at an hour is called: one at a time. */
  public static String name(LocalDate day, LocalTime from) {
    return NAME + day + " " + from;
  }

  /** The name as it stands in an address, such as {@code 2026-03-14-1000}. */
  public static String slug(String number) {
    String plain = number.startsWith(NAME) ? number.substring(NAME.length()) : number;
    return plain.replace(' ', '-').replace(":", "").toLowerCase(Locale.ROOT);
  }

  /** The number of an order by the name in an address; it need not be in the books. */
  public static String number(String slug) {
    return slug.matches("\\d{4}-\\d\\d-\\d\\d-\\d{4}")
        ? NAME + slug.substring(0, 10) + " " + slug.substring(11, 13) + ":" + slug.substring(13)
        : NAME + slug;
  }

  static String key(String number) {
    return KEY + slug(number);
  }

  static String value(SeatClass one) {
    return one.does().name().toLowerCase(Locale.ROOT)
        + " "
        + one.from()
        + " "
        + one.to()
        + " "
        + one.teacher();
  }

  private static Optional<SeatClass> read(Books books, Order order) {
    Optional<String> said = books.settings().value(key(order.number()));
    if (said.isEmpty() || order.lines().isEmpty()) {
      return Optional.empty();
    }
    OrderLine line = order.lines().get(0);
    LocalDate day = line.dueOn();
    String[] words = said.get().split(" ", 4);
    if (day == null || words.length < 4) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new SeatClass(
              order.number(),
              line.design(),
              SeatClass.Does.valueOf(words[0].toUpperCase(Locale.ROOT)),
              line.quantity(),
              day,
              LocalTime.parse(words[1]),
              LocalTime.parse(words[2]),
              words[3]));
    } catch (IllegalArgumentException | DateTimeException e) {
      return Optional.empty(); // the setting was typed over: the order is there, its hours are not
    }
  }
}

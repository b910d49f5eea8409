package pourwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.order.ImportChanges;
import pourwright.order.Order;
import pourwright.order.OrderImport;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;

/** Takes a read order file into the book, all of it. The same file again adds nothing. */
public final class AcceptOrders {
  private static final String VERB = "took in an order file";
  private final Doing doing;

  AcceptOrders(Doing doing) {
    this.doing = doing;
  }

  /**
   * What taking a file in changed.
   *
   * @param changes line by line
   */
  public record Accepted(ImportChanges changes) {}

  /** What would change, without changing it; to be shown before the file is taken in. */
  public ImportChanges preview(OrderImport.Ready ready) {
    return doing.look(books -> changes(books, ready));
  }

  /** What there is already for the lines that a file changes or cancels. */
  public Map<OrderLine.Key, AlreadyMade> already(ImportChanges changes) {
    return doing.look(books -> AlreadyMade.of(books, changes, doing.today()));
  }

  /** Takes it in. */
  public Outcome<Accepted> run(Act act, String fileName, OrderImport.Ready ready) {
    return doing.once(
        act,
        VERB,
        turn -> accept(turn, fileName, ready),
        (books, deed) -> new Accepted(nothing(books, ready)));
  }

  private static ImportChanges nothing(Books books, OrderImport.Ready ready) {
    return changes(books, ready);
  }

  private static ImportChanges changes(Books books, OrderImport.Ready ready) {
    List<OrderLine> file = ready.lines().stream().map(OrderImport.Read::line).toList();
    List<String> numbers = file.stream().map(OrderLine::order).distinct().toList();
    List<OrderLine> book = new ArrayList<>();
    for (Order order : books.orders().of(numbers)) {
      book.addAll(order.lines());
    }
    return ImportChanges.between(book, file);
  }

  private static Outcome<Accepted> accept(Turn turn, String fileName, OrderImport.Ready ready) {
    OrderBook orders = turn.books().orders();
    ImportChanges changes = changes(turn.books(), ready);
    Optional<Deed> before = orders.file(ready.fingerprint());
    if (changes.isNothing() && before.isPresent()) {
      return new Outcome.Done<>(before.get(), new Accepted(changes), true);
    }
    Deed deed = turn.deed(new Subject(Subject.Kind.ORDER_FILE, ready.fingerprint()));
    orders.keepFile(ready.fingerprint(), fileName, ready.lines().size(), deed);
    Map<String, OrderImport.Read> firsts = new LinkedHashMap<>();
    ready.lines().forEach(read -> firsts.putIfAbsent(read.line().order(), read));
    int nth = 0;
    for (Map.Entry<String, OrderImport.Read> first : firsts.entrySet()) {
      if (orders.order(first.getKey()).isEmpty()) {
        nth++;
        String channel = first.getValue().channel() == null ? "shop" : first.getValue().channel();
        String customer = customer(turn, first.getValue().customer(), deed, nth);
        orders.put(new Order(first.getKey(), channel, customer, OrderState.OPEN, List.of()), deed);
      }
    }
    changes.added().forEach(line -> orders.put(line, deed));
    changes.edited().forEach(edit -> orders.put(edit.after(), deed));
    changes.cancelled().forEach(line -> orders.takeOff(line.key(), deed));
    orders.retellOrdersOf(deed.id());
    return Turn.done(deed, new Accepted(changes));
  }

  private static @Nullable String customer(Turn turn, @Nullable String name, Deed deed, int nth) {
    if (name == null || name.isBlank()) {
      return null;
    }
    Optional<Customer> known = turn.books().customers().named(name.strip());
    if (known.isPresent()) {
      return known.get().ref();
    }
    String ref = "c" + deed.id() + "-" + nth;
    turn.books().customers().put(Customer.named(ref, name.strip()));
    return ref;
  }
}

package pourwright.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Piece;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceStep;
import pourwright.cost.MoneyKind;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.order.OrderState;
import pourwright.quantity.Counted;

/**
 * Goods left with a shop that are still hers: kept as an order of the channel <i>consignment</i>.
 * What is left there is picked for its lines at a price agreed that day; the shop tells now and
 * then what it sold, keeps its commission, and gives back what it does not want. The same goes for
 * pieces that are only lent to be shown: none of them is ever told as sold.
 */
public final class LeaveWithShop {
  /** The channel of such an order. */
  public static final String CHANNEL = "consignment";

  /** How the name of such an order begins. */
  public static final String HEAD = "Left with ";

  private static final String LEFT = "left with a shop";
  private static final String TOLD = "told what a shop sold";
  private static final double MINOR = 100;
  private final Doing doing;

  LeaveWithShop(Doing doing) {
    this.doing = doing;
  }

  /**
   * What is left with a shop.
   *
   * @param shop its name
   * @param day when
   * @param take how many of each candle, by code
   */
  public record Leave(String shop, LocalDate day, Map<String, Integer> take) {
    /** Keeps its own copy. */
    public Leave {
      take = Map.copyOf(take);
    }

    /** The order it is kept as. */
    public String order() {
      return HEAD + shop + " " + day;
    }
  }

  /**
   * What a shop told.
   *
   * @param order as it is kept
   * @param sold how many were sold since the last time, by line number
   * @param home how many came home, by line number
   * @param homeMarks marks that were read on what came home; they come first
   * @param commissionMinor what the shop keeps of the sales; null for its share by the terms
   * @param paidMinor what the shop paid, 0 for nothing yet
   */
  public record Told(
      String order,
      Map<Long, Integer> sold,
      Map<Long, Integer> home,
      Collection<Long> homeMarks,
      @Nullable Long commissionMinor,
      long paidMinor) {
    /** Keeps its own copies. */
    public Told {
      sold = Map.copyOf(sold);
      home = Map.copyOf(home);
      homeMarks = List.copyOf(homeMarks);
    }
  }

  /**
   * What came of it.
   *
   * @param sold pieces sold now
   * @param still pieces that are with the shop after it
   * @param heldMarks marks that were sold although a hold stands on them: call these back
   */
  public record Standing(int sold, int still, List<String> heldMarks) {}

  /** Takes the pieces from the shelf, oldest first; all of them or none. */
  public Outcome<Order> leave(Act act, Leave leave) {
    return doing.once(
        act,
        LEFT,
        turn -> left(turn, leave),
        (books, deed) -> Doing.known(books.orders().order(deed.subject().id()), deed));
  }

  private static Outcome<Order> left(Turn turn, Leave leave) {
    Books books = turn.books();
    String shop = leave.shop().strip();
    if (shop.isEmpty() || shop.contains("/")) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE, "the shop has no name", "give a short name without a slash");
    }
    if (books.orders().order(leave.order()).isPresent()) {
      return Outcome.refused(
          Reason.ALREADY_ON_FILE,
          leave.order() + " is in the book",
          "add to the name, as 'Quay Shop, shelf 2'");
    }
    Map<String, Integer> take = new TreeMap<>(leave.take());
    take.values().removeIf(n -> n <= 0);
    if (take.isEmpty()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE, "nothing is left there", "say how many of at least one candle");
    }
    OnTheShelf.Taken taken = OnTheShelf.take(books, take);
    if (!taken.missing().isEmpty()) {
      return Outcome.refused(
          Reason.PIECE_IS_NOT_THERE_YET,
          String.join("; ", taken.missing()),
          "leave what is there; held, resting and picked ones do not count");
    }
    Outcome<Order> notProved = ForSale.refusal(books, taken.all());
    if (notProved != null) {
      return notProved;
    }
    Deed deed = turn.deed(new Subject(Subject.Kind.ORDER, leave.order()));
    String ref = "shop " + shop;
    if (books.customers().customer(ref).isEmpty()) {
      books.customers().put(Customer.named(ref, shop));
    }
    List<OrderLine> lines =
        take.entrySet().stream()
            .map(e -> new OrderLine(leave.order(), e.getKey(), 1, e.getValue(), null, null))
            .toList();
    books.orders().put(new Order(leave.order(), CHANNEL, ref, OrderState.PICKED, lines), deed);
    PriceList prices = PriceList.of(books);
    for (OrderLine line : lines) {
      long id = books.orders().put(line, deed);
      for (Piece piece : taken.pieces().getOrDefault(line.design(), List.of())) {
        books.pieces().append(event(turn, piece.id(), PieceStep.PICKED, id, deed));
      }
      prices
          .in(line.design(), CHANNEL)
          .ifPresent(
              price ->
                  money(
                      turn, MoneyKind.AGREED, leave.order(), id, Math.round(price * MINOR), deed));
    }
    books.orders().retellOrdersOf(deed.id());
    return Turn.done(deed, Doing.known(books.orders().order(leave.order()), deed));
  }

  private static PieceEvent event(
      Turn turn, long piece, PieceStep step, @Nullable Long line, Deed deed) {
    return new PieceEvent(0, piece, step, turn.now(), null, line, null, null, deed.id());
  }

  private static void money(
      Turn turn, MoneyKind kind, String order, @Nullable Long line, long minor, Deed deed) {
    String currency = turn.books().settings().value("currency").orElse("EUR");
    turn.books()
        .money()
        .append(new MoneyFact(0, kind, order, line, minor, currency, turn.today(), "", 0), deed);
  }

  /** Sells what was sold, takes back what came home; the rest stays with the shop. */
  public Outcome<Standing> told(Act act, Told told) {
    return doing.once(
        act,
        TOLD,
        turn -> told(turn, told),
        (books, deed) -> new Standing(0, still(books, told.order()), List.of()));
  }

  /** How many pieces of an order are with the shop. */
  static int still(Books books, String order) {
    return books.recalls().pickedFor(order).size();
  }

  private static Outcome<Standing> told(Turn turn, Told told) {
    Books books = turn.books();
    Optional<Order> order = books.orders().order(told.order());
    if (order.isEmpty() || !order.get().channel().equals(CHANNEL)) {
      return Doing.notOnFile(told.order());
    }
    Map<Long, List<Long>> out = new TreeMap<>();
    books
        .orders()
        .lineIds(told.order())
        .values()
        .forEach(line -> out.put(line, new ArrayList<>(books.recalls().pickedForLine(line))));
    Optional<Outcome<Standing>> refusal = refusal(books, told, out);
    if (refusal.isPresent()) {
      return refusal.get();
    }
    Deed deed = turn.deed(new Subject(Subject.Kind.ORDER, told.order()));
    boolean holds = !books.holds().standing().isEmpty();
    List<String> held = new ArrayList<>();
    int sold = 0;
    int still = 0;
    for (Map.Entry<Long, List<Long>> line : out.entrySet()) {
      List<Long> there = line.getValue();
      for (long piece : home(there, told, told.home().getOrDefault(line.getKey(), 0))) {
        books.pieces().append(event(turn, piece, PieceStep.UNPICKED, null, deed));
        there.remove(piece);
      }
      int count = told.sold().getOrDefault(line.getKey(), 0);
      for (long piece : there.subList(0, count)) {
        if (holds && !books.holds().stopping(piece).isEmpty()) {
          books.pieces().piece(piece).ifPresent(p -> held.add(p.mark().text()));
        }
        books.pieces().append(event(turn, piece, PieceStep.SOLD, line.getKey(), deed));
      }
      sold += count;
      still += there.size() - count;
    }
    settle(turn, told, deed);
    if (still == 0) {
      Order now = order.get();
      books
          .orders()
          .put(
              new Order(now.number(), now.channel(), now.customer(), OrderState.SENT, now.lines()),
              deed);
    }
    books.orders().retellOrdersOf(deed.id());
    return Turn.done(deed, new Standing(sold, still, held));
  }

  private static Optional<Outcome<Standing>> refusal(
      Books books, Told told, Map<Long, List<Long>> out) {
    int all = 0;
    for (Map.Entry<Long, List<Long>> line : out.entrySet()) {
      int sold = told.sold().getOrDefault(line.getKey(), 0);
      int home = told.home().getOrDefault(line.getKey(), 0);
      all += sold + home;
      if (sold < 0 || home < 0 || sold + home > line.getValue().size()) {
        String design = books.orders().line(line.getKey()).map(OrderLine::design).orElse("a line");
        return Optional.of(
            Outcome.refused(
                Reason.INPUT_CANNOT_BE,
                sold
                    + " of "
                    + design
                    + " sold and "
                    + home
                    + " home, "
                    + Counted.of(line.getValue().size(), "is with the shop", "are with the shop"),
                "count again with the shop"));
      }
    }
    long commission = told.commissionMinor() == null ? 0 : told.commissionMinor();
    if (commission < 0 || told.paidMinor() < 0) {
      return Optional.of(
          Outcome.refused(
              Reason.INPUT_CANNOT_BE,
              "less than nothing was paid or kept",
              "give amounts of 0 or more"));
    }
    if (all == 0 && commission == 0 && told.paidMinor() == 0) {
      return Optional.of(
          Outcome.refused(
              Reason.INPUT_CANNOT_BE,
              "nothing was sold, fetched or paid",
              "give at least one number"));
    }
    return Optional.empty();
  }

  /** Which pieces came home: those whose mark was read, then the youngest. */
  private static List<Long> home(List<Long> there, Told told, int count) {
    List<Long> home =
        new ArrayList<>(there.stream().filter(told.homeMarks()::contains).limit(count).toList());
    for (int i = there.size() - 1; i >= 0 && home.size() < count; i--) {
      if (!home.contains(there.get(i))) {
        home.add(there.get(i));
      }
    }
    return home;
  }

  private static void settle(Turn turn, Told told, Deed deed) {
    Long kept = told.commissionMinor();
    long commission = kept == null ? byTerms(turn.books(), told) : kept;
    if (commission > 0) {
      money(turn, MoneyKind.COMMISSION, told.order(), null, commission, deed);
    }
    if (told.paidMinor() > 0) {
      money(turn, MoneyKind.PAID, told.order(), null, told.paidMinor(), deed);
    }
  }

  /** The shop's share of what it sold, by the terms of the channel. */
  private static long byTerms(Books books, Told told) {
    Map<Long, Long> agreed = books.money().agreed(told.sold().keySet());
    long sales = 0;
    for (Map.Entry<Long, Integer> line : told.sold().entrySet()) {
      sales += agreed.getOrDefault(line.getKey(), 0L) * line.getValue();
    }
    double share =
        new SlateBook(books)
            .terms().stream()
                .filter(t -> t.key().equals(CHANNEL))
                .mapToDouble(t -> t.channel().feeFraction())
                .findFirst()
                .orElse(0);
    return Math.round(sales * share);
  }
}

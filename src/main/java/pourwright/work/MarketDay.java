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
 * A day at a market, kept as an order of the stall: what is packed is picked for its lines, and in
 * the evening what comes home is put back and the difference is sold. Each is one deed.
 */
public final class MarketDay {
  /** The channel of such an order. */
  public static final String CHANNEL = "stall";

  private static final String PACKED = "packed for a market";
  private static final String COUNTED = "counted back from a market";
  private final Doing doing;

  MarketDay(Doing doing) {
    this.doing = doing;
  }

  /**
   * What goes to the market.
   *
   * @param name as the order is called; not yet in the book
   * @param day the day of the market
   * @param take how many of each candle, by code
   * @param floatMinor change taken along, cents; 0 for none
   */
  public record Pack(String name, LocalDate day, Map<String, Integer> take, long floatMinor) {
    /** Keeps its own copy. */
    public Pack {
      take = Map.copyOf(take);
    }
  }

  /**
   * What came home.
   *
   * @param order the market's order
   * @param home how many came home, by line number; a line left out came home empty
   * @param homeMarks marks that were read on what came home; they come first
   * @param takingsMinor money in the till without the float, null when it was not counted
   * @param feeMinor what the stall cost, 0 for nothing
   * @param footfall people who came by, null when nobody counted
   * @param weather in a word or two, may be empty
   */
  public record Home(
      String order,
      Map<Long, Integer> home,
      Collection<Long> homeMarks,
      @Nullable Long takingsMinor,
      long feeMinor,
      @Nullable Integer footfall,
      String weather) {
    /** Keeps its own copies. */
    public Home {
      home = Map.copyOf(home);
      homeMarks = List.copyOf(homeMarks);
    }
  }

  /**
   * What the evening came to.
   *
   * @param sold pieces sold by line number
   * @param heldMarks marks that were sold although a hold stands on them: call these back
   */
  public record Evening(Map<Long, Integer> sold, List<String> heldMarks) {}

  /** Takes the pieces from the shelf, oldest first; all of them or none. */
  public Outcome<Order> pack(Act act, Pack pack) {
    return doing.once(
        act,
        PACKED,
        turn -> packed(turn, pack),
        (books, deed) -> Doing.known(books.orders().order(deed.subject().id()), deed));
  }

  private static Outcome<Order> packed(Turn turn, Pack pack) {
    Books books = turn.books();
    if (books.orders().order(pack.name()).isPresent()) {
      return Outcome.refused(
          Reason.ALREADY_ON_FILE, pack.name() + " is in the book", "give the day another name");
    }
    Map<String, Integer> take = new TreeMap<>(pack.take());
    take.values().removeIf(n -> n <= 0);
    if (take.isEmpty()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE, "nothing is packed", "say how many of at least one candle");
    }
    OnTheShelf.Taken taken = OnTheShelf.take(books, take);
    if (!taken.missing().isEmpty()) {
      return Outcome.refused(
          Reason.PIECE_IS_NOT_THERE_YET,
          String.join("; ", taken.missing()),
          "take what is there; held, resting and picked ones do not count");
    }
    Outcome<Order> notProved = ForSale.refusal(books, taken.all());
    if (notProved != null) {
      return notProved;
    }
    Deed deed = turn.deed(new Subject(Subject.Kind.ORDER, pack.name()));
    List<OrderLine> lines =
        take.entrySet().stream()
            .map(e -> new OrderLine(pack.name(), e.getKey(), 1, e.getValue(), pack.day(), null))
            .toList();
    books.orders().put(new Order(pack.name(), CHANNEL, null, OrderState.PICKED, lines), deed);
    for (OrderLine line : lines) {
      long id = books.orders().put(line, deed);
      for (Piece piece : taken.pieces().getOrDefault(line.design(), List.of())) {
        books.pieces().append(event(turn, piece.id(), PieceStep.PICKED, id, deed));
      }
    }
    if (pack.floatMinor() > 0) {
      money(turn, MoneyKind.FLOAT_OUT, pack.name(), pack.floatMinor(), deed);
    }
    books.orders().retellOrdersOf(deed.id());
    return Turn.done(deed, Doing.known(books.orders().order(pack.name()), deed));
  }

  private static PieceEvent event(
      Turn turn, long piece, PieceStep step, @Nullable Long line, Deed deed) {
    return new PieceEvent(0, piece, step, turn.now(), null, line, null, null, deed.id());
  }

  private static void money(Turn turn, MoneyKind kind, String order, long minor, Deed deed) {
    String currency = turn.books().settings().value("currency").orElse("EUR");
    turn.books()
        .money()
        .append(new MoneyFact(0, kind, order, null, minor, currency, turn.today(), "", 0), deed);
  }

  /** Puts back what came home and sells the rest. */
  public Outcome<Evening> countBack(Act act, Home home) {
    return doing.once(
        act,
        COUNTED,
        turn -> counted(turn, home),
        (books, deed) -> new Evening(sold(books, home.order()), List.of()));
  }

  private static Map<Long, Integer> sold(Books books, String order) {
    return books.orders().filled(books.orders().lineIds(order).values());
  }

  private static Outcome<Evening> counted(Turn turn, Home home) {
    Books books = turn.books();
    Optional<Order> order = books.orders().order(home.order());
    if (order.isEmpty() || !order.get().channel().equals(CHANNEL)) {
      return Doing.notOnFile("market " + home.order());
    }
    Map<Long, List<Long>> out = new TreeMap<>();
    books
        .orders()
        .lineIds(home.order())
        .values()
        .forEach(line -> out.put(line, new ArrayList<>(books.recalls().pickedForLine(line))));
    if (out.values().stream().allMatch(List::isEmpty)) {
      return Outcome.refused(
          Reason.IT_IS_ALREADY_ANSWERED,
          home.order() + " was counted back already",
          "undo that count to do it again");
    }
    for (Map.Entry<Long, Integer> line : home.home().entrySet()) {
      int had = out.getOrDefault(line.getKey(), List.of()).size();
      if (line.getValue() < 0 || line.getValue() > had) {
        String design = books.orders().line(line.getKey()).map(OrderLine::design).orElse("a line");
        return Outcome.refused(
            Reason.INPUT_CANNOT_BE,
            line.getValue()
                + " of "
                + design
                + " came home, "
                + Counted.of(had, "was taken", "were taken"),
            "count again; what was never packed is counted on the shelf");
      }
    }
    Deed deed = turn.deed(new Subject(Subject.Kind.ORDER, home.order()));
    Map<Long, Integer> sold = new TreeMap<>();
    List<String> held = new ArrayList<>();
    boolean holds = !books.holds().standing().isEmpty();
    out.forEach(
        (line, pieces) -> {
          List<Long> back = back(pieces, home, home.home().getOrDefault(line, 0));
          back.forEach(p -> books.pieces().append(event(turn, p, PieceStep.UNPICKED, null, deed)));
          pieces.removeAll(back);
          for (long piece : pieces) {
            if (holds && !books.holds().stopping(piece).isEmpty()) {
              books.pieces().piece(piece).ifPresent(p -> held.add(p.mark().text()));
            }
            books.pieces().append(event(turn, piece, PieceStep.SOLD, line, deed));
          }
          sold.put(line, pieces.size());
        });
    notes(turn, home, order.get(), deed);
    return Turn.done(deed, new Evening(sold, held));
  }

  /** Which pieces came home: those whose mark was read, then the youngest. */
  private static List<Long> back(List<Long> pieces, Home home, int count) {
    List<Long> back = new ArrayList<>(pieces.stream().filter(home.homeMarks()::contains).toList());
    for (int i = pieces.size() - 1; i >= 0 && back.size() < count; i--) {
      if (!back.contains(pieces.get(i))) {
        back.add(pieces.get(i));
      }
    }
    return back;
  }

  private static void notes(Turn turn, Home home, Order order, Deed deed) {
    Books books = turn.books();
    books
        .orders()
        .put(
            new Order(
                order.number(), order.channel(), order.customer(), OrderState.SENT, order.lines()),
            deed);
    books.orders().retellOrdersOf(deed.id());
    Long takings = home.takingsMinor();
    if (takings != null && takings > 0) {
      money(turn, MoneyKind.PAID, home.order(), takings, deed);
    }
    if (home.feeMinor() > 0) {
      money(turn, MoneyKind.FEE, home.order(), home.feeMinor(), deed);
    }
    books.money().of(home.order()).stream()
        .filter(m -> m.kind() == MoneyKind.FLOAT_OUT)
        .forEach(m -> money(turn, MoneyKind.FLOAT_HOME, home.order(), m.minor(), deed));
    Integer footfall = home.footfall();
    if (footfall != null || !home.weather().isBlank()) {
      books
          .readings()
          .append(
              new Reading(
                  0,
                  new Subject(Subject.Kind.ORDER, home.order()),
                  "footfall",
                  footfall == null ? 0 : footfall,
                  turn.now(),
                  null,
                  home.weather().strip(),
                  0),
              deed);
    }
  }
}

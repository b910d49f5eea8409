package pourwright.work;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.card.Person;
import pourwright.order.OrderLine;
import pourwright.plan.ClassKit;
import pourwright.plan.Explosion;
import pourwright.plan.Floor;
import pourwright.plan.Habits;
import pourwright.plan.InHand;
import pourwright.plan.MakePlan;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;
import pourwright.plan.Routing;
import pourwright.plan.VesselKind;
import pourwright.stock.Shelf;

/**
 * From order lines and the books to a plan: what is to be made, of which lots, and when.
 *
 * @param book the cards it was made from
 * @param inHand what there was
 * @param habits how the studio works
 * @param floor who and what there is
 * @param make casts, pours, needs, draws
 * @param problem the steps
 * @param outcome the plan, or why there is none
 */
public record WorkPlan(
    CardBook book,
    InHand inHand,
    Habits habits,
    Floor floor,
    MakePlan make,
    PlanProblem problem,
    Planner.Outcome outcome) {

  /** Candles that may be sold, or will be when they have rested. */
  private static final List<String> CANDLES = List.of("Rested", "Resting", "Poured");

  /** Candles that may be sold now. */
  private static final List<String> RESTED = List.of("Rested");

  /** Vessels that may be poured into. */
  private static final List<String> READY = List.of("Dry");

  /** Vessels that may be poured into, or will be some day. */
  private static final List<String> VESSELS = List.of("Dry", "Damp", "Hardened", "Green");

  /** The plan; null where there is none. */
  public @Nullable Plan plan() {
    return outcome instanceof Planner.Planned planned ? planned.plan() : null;
  }

  /** Why there is no plan; empty where there is one. */
  public List<String> reasons() {
    if (outcome instanceof Planner.Impossible impossible) {
      return impossible.reasons();
    }
    return outcome instanceof Planner.NotFound notFound ? notFound.reasons() : List.of();
  }

  /**
   * Plans order lines.
   *
   * @param books as one transaction sees them
   * @param lines what is ordered
   * @param now minute 0
   * @param zone the studio's clock
   * @param planner who orders the steps
   */
  public static WorkPlan of(
      Books books, List<OrderLine> lines, Instant now, ZoneId zone, Planner planner) {
    return of(books, lines, now, zone, planner, Planner.Effort.of(Duration.ofSeconds(5)));
  }

  /** Plans order lines, so hard. */
  public static WorkPlan of(
      Books books,
      List<OrderLine> lines,
      Instant now,
      ZoneId zone,
      Planner planner,
      Planner.Effort effort) {
    CardBook book = Drawers.book(books);
    InHand inHand = inHand(books, book, now, zone);
    Habits habits = PlanSettings.habits(books);
    Floor floor = floor(books, book, now, zone);
    LocalDate today = LocalDate.ofInstant(now, zone);
    Classes classes = Classes.of(books, today);
    double spare = PlanSettings.spareShare(books);
    List<ClassKit> kits = classes.ahead().stream().map(c -> ClassKit.of(c, book, spare)).toList();
    List<OrderLine> made =
        lines.stream().filter(l -> !classes.orders().contains(l.order())).toList();
    List<OrderLine> all = TestPieces.with(books, made, PlanSettings.testPieces(books));
    MakePlan make = Explosion.of(all, kits, book, inHand, habits);
    PlanProblem problem = Routing.of(make, BurnsAhead.of(books, book, now), book, habits, floor);
    Planner.Outcome outcome = planner.plan(problem, effort);
    return new WorkPlan(book, inHand, habits, floor, make, problem, outcome);
  }

  /** The same with another plan of its problem. */
  public WorkPlan with(Planner.Outcome other) {
    return new WorkPlan(book, inHand, habits, floor, make, problem, other);
  }

  /**
   * Who works here, with house hours less the classes that are taught; one maker where no person is
   * written down.
   */
  public static Floor floor(Books books, CardBook book, Instant now, ZoneId zone) {
    return Floor.house(now, zone, hands(books, book))
        .with(PlanSettings.post(books))
        .teaching(Classes.of(books, LocalDate.ofInstant(now, zone)).ahead());
  }

  /** Initials of those whose hands are planned. */
  public static List<String> hands(Books books) {
    return hands(books, Drawers.book(books));
  }

  private static List<String> hands(Books books, CardBook book) {
    List<String> initials =
        book.all(Person.class).stream()
            .filter(p -> p.role() == Person.Role.MAKER)
            .map(Person::initials)
            .toList();
    String said = books.settings().value("plan.hands").orElse("");
    return said.isBlank()
        ? initials.isEmpty() ? List.of("MAKER") : initials
        : List.of(said.strip().split("[ ,]+"));
  }

  /** What is there now, with casts and pours under way as far as they are. */
  private static InHand inHand(Books books, CardBook book, Instant now, ZoneId zone) {
    Set<Long> stopped = books.holds().stopped();
    Set<String> held = heldCandles(books);
    PoursUnderway pours = PoursUnderway.of(books, book, stopped, held, now);
    Map<String, Integer> candles = candles(books, RESTED, stopped, held);
    pours.ready().forEach((candle, n) -> candles.merge(candle, n, Integer::sum));
    Map<VesselKind, Integer> vessels = vessels(books, book, READY, stopped);
    pours
        .vessels()
        .forEach((kind, n) -> vessels.computeIfPresent(kind, (k, v) -> v > n ? v - n : null));
    return new InHand(
        candles,
        vessels,
        Underway.of(books, book, stopped, now),
        pours.pours(),
        shelves(books),
        LocalDate.ofInstant(now, zone));
  }

  /** What is there: candles that may be sold or soon may, vessels on their way too, lots. */
  public static InHand inHand(Books books, CardBook book, LocalDate today) {
    Set<Long> stopped = books.holds().stopped();
    return new InHand(
        candles(books, CANDLES, stopped, heldCandles(books)),
        vessels(books, book, VESSELS, stopped),
        shelves(books),
        today);
  }

  private static Set<String> heldCandles(Books books) {
    String candle = "candle/";
    return books.holds().standing().stream()
        .filter(h -> h.subject().kind() == Subject.Kind.CARD)
        .map(h -> h.subject().id())
        .filter(id -> id.startsWith(candle))
        .map(id -> id.substring(candle.length()))
        .collect(Collectors.toSet());
  }

  private static Map<String, List<Shelf>> shelves(Books books) {
    return books.lots().allShelves().stream()
        .collect(Collectors.groupingBy(s -> s.lot().material()));
  }

  private static Map<String, Integer> candles(
      Books books, List<String> states, Set<Long> stopped, Set<String> held) {
    Map<String, Integer> candles = new HashMap<>();
    for (PieceBook.Standing piece : books.pieces().standing(states)) {
      if (piece.isFirst() && !stopped.contains(piece.piece()) && !held.contains(piece.design())) {
        candles.merge(piece.design(), 1, Integer::sum);
      }
    }
    return candles;
  }

  private static Map<VesselKind, Integer> vessels(
      Books books, CardBook book, List<String> states, Set<Long> stopped) {
    Map<VesselKind, Integer> vessels = new TreeMap<>();
    Map<List<String>, Optional<VesselKind>> kinds = new HashMap<>(); // pieces are many, kinds few
    for (PieceBook.Standing piece : books.pieces().standing(states)) {
      if (piece.isFirst() && !stopped.contains(piece.piece())) {
        kinds
            .computeIfAbsent(
                List.of(piece.vesselDesign(), piece.madeBy()), k -> kind(book, k.get(0), k.get(1)))
            .ifPresent(kind -> vessels.merge(kind, 1, Integer::sum));
      }
    }
    return vessels;
  }

  /** A vessel's mix is that of its cast; its finish is that of the candles it is written for. */
  static Optional<VesselKind> kind(CardBook book, String vessel, String mix) {
    return book.all(CandleDesign.class).stream()
        .filter(c -> c.vessel().equals(vessel) && c.mix().equals(mix))
        .map(VesselKind::of)
        .findFirst();
  }
}

package pourwright.work;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pourwright.material.UnitKind;
import pourwright.stock.Deliveries;
import pourwright.stock.Lot;
import pourwright.stock.Movement;
import pourwright.stock.Shelf;

/**
 * Writes down what was ordered from a supplier, so that it counts as on order until it comes and
 * its lead time is known when it has. An order is a reading of the material's card; what came of it
 * is worked out from the lots.
 */
public final class PlaceOrder {
  private static final Map<UnitKind, String> QUANTITIES =
      new EnumMap<>(
          Map.of(
              UnitKind.MASS, "ordered_g",
              UnitKind.VOLUME, "ordered_ml",
              UnitKind.COUNT, "ordered_pieces"));

  /** Quantity of the word that an order will not come; the value is the order's number. */
  private static final String GIVEN_UP = "order_given_up";

  private static final int AT_ONCE = 1000;
  private static final String VERB = "ordered material";
  private static final String VERB_GIVEN_UP = "gave an order of material up";
  private final Doing doing;

  PlaceOrder(Doing doing) {
    this.doing = doing;
  }

  /**
   * A line of an order.
   *
   * @param material code
   * @param supplier code or name, or an empty string
   * @param amount in the material's usual unit, above 0
   */
  public record Line(String material, String supplier, double amount) {}

  /** Writes all lines down, or none. */
  public Outcome<List<Reading>> run(Act act, List<Line> lines) {
    return doing.once(
        act, VERB, turn -> place(turn, lines), (books, deed) -> books.readings().ofDeed(deed.id()));
  }

  private static Outcome<List<Reading>> place(Turn turn, List<Line> lines) {
    if (lines.isEmpty()) {
      return Outcome.refused(Reason.INPUT_CANNOT_BE, "nothing is ordered", "name what was ordered");
    }
    for (Line line : lines) {
      if (turn.books().cards().current(Drawers.MATERIAL, line.material()).isEmpty()) {
        return Doing.notOnFile("material " + line.material());
      }
      if (!(line.amount() > 0) || line.amount() > 1e8) {
        return Outcome.refused(
            Reason.AMOUNT_MUST_BE_POSITIVE,
            line.amount() + " of " + line.material() + " ordered",
            "give an amount above zero");
      }
    }
    Deed deed = turn.deed(subject(lines.get(0).material()));
    List<Reading> written = new ArrayList<>();
    for (Line line : lines) {
      UnitKind unit = unit(turn.books(), line.material());
      Reading reading =
          new Reading(
              0,
              subject(line.material()),
              QUANTITIES.getOrDefault(unit, ""),
              line.amount(),
              turn.now(),
              null,
              line.supplier(),
              0);
      written.add(turn.books().readings().append(reading, deed));
    }
    return Turn.done(deed, written);
  }

  private static UnitKind unit(Books books, String material) {
    return books
        .cards()
        .current(Drawers.MATERIAL, material)
        .map(m -> m.body().unit())
        .orElse(UnitKind.MASS);
  }

  private static Subject subject(String material) {
    return Subject.card(Drawers.MATERIAL, material);
  }

  /** Writes down that an open order will not come. */
  public Outcome<List<Reading>> giveUp(Act act, long order) {
    return doing.once(
        act,
        VERB_GIVEN_UP,
        turn -> {
          Optional<Deliveries.Open> open =
              of(turn.books(), ZoneOffset.UTC).open().stream()
                  .filter(o -> o.order().id() == order)
                  .findFirst();
          if (open.isEmpty()) {
            return Doing.notOnFile("open order " + order);
          }
          Subject subject = subject(open.get().order().material());
          Deed deed = turn.deed(subject);
          Reading word = Reading.fresh(subject, GIVEN_UP, order, turn.now());
          return Turn.done(deed, List.of(turn.books().readings().append(word, deed)));
        },
        (books, deed) -> books.readings().ofDeed(deed.id()));
  }

  /** What is on order and how long deliveries took, from the books. */
  public static Deliveries of(Books books, ZoneId zone) {
    Set<Long> gone = new HashSet<>();
    all(books, GIVEN_UP).forEach(r -> gone.add(Math.round(r.value())));
    List<Deliveries.Ordered> ordered = new ArrayList<>();
    Set<String> materials = new HashSet<>();
    for (String quantity : QUANTITIES.values()) {
      for (Reading reading : all(books, quantity)) {
        String id = reading.subject().id();
        String material = id.substring(id.indexOf('/') + 1);
        if (!gone.contains(reading.id())) {
          materials.add(material);
          ordered.add(
              new Deliveries.Ordered(
                  reading.id(),
                  material,
                  reading.note(),
                  reading.takenAt().atZone(zone).toLocalDate(),
                  reading.deed(),
                  reading.value()));
        }
      }
    }
    List<Deliveries.Came> came = new ArrayList<>();
    materials.forEach(material -> came(books, material, came));
    return Deliveries.of(ordered, came);
  }

  private static void came(Books books, String material, List<Deliveries.Came> came) {
    Map<Long, List<Movement>> moved =
        books.lots().ofMaterial(material, 0).stream().collect(Collectors.groupingBy(Movement::lot));
    String after = null;
    do {
      PageOf<Shelf> page = books.lots().list(material, after, AT_ONCE);
      for (Shelf shelf : page.items()) {
        Lot lot = shelf.lot();
        double amount =
            moved.getOrDefault(lot.id(), List.of()).stream()
                .filter(m -> m.deed() == lot.deed())
                .mapToDouble(m -> m.change().inUsualUnit())
                .sum();
        String supplier = lot.supplier() == null ? "" : lot.supplier();
        came.add(new Deliveries.Came(material, supplier, lot.receivedOn(), lot.deed(), amount));
      }
      after = page.next();
    } while (after != null);
  }

  private static List<Reading> all(Books books, String quantity) {
    List<Reading> all = new ArrayList<>();
    String after = null;
    do {
      PageOf<Reading> page = books.readings().list(quantity, after, AT_ONCE);
      all.addAll(page.items());
      after = page.next();
    } while (after != null);
    return all;
  }
}

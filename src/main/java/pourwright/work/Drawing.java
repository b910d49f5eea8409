package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.material.Material;
import pourwright.material.ShelfLife;
import pourwright.stock.Amount;
import pourwright.stock.FirstExpiredFirstOut;
import pourwright.stock.FirstExpiredFirstOut.Draw;
import pourwright.stock.FirstExpiredFirstOut.Line;
import pourwright.stock.Shelf;

/** Which lots a turn draws from; looks only, the use case writes. */
final class Drawing {
  private Drawing() {}

  /** First-expired-first-out over all lots that may be drawn; says what is missing. */
  static Draw planned(Turn turn, String material, Amount wanted) {
    List<Shelf> shelves = new ArrayList<>();
    for (Shelf shelf : turn.books().lots().shelves(material)) {
      if (shelf.lot().kind() == wanted.kind()) {
        shelves.add(shelf);
      }
    }
    ShelfLife life =
        Drawers.material(turn.books(), material).map(Material::shelfLife).orElse(ShelfLife.KEEPS);
    return FirstExpiredFirstOut.draw(shelves, wanted, turn.today(), life);
  }

  /** Why a lot that a person chose cannot give an amount, if it cannot. */
  static <T> Optional<Outcome<T>> refusal(Turn turn, long lot, Amount wanted) {
    Optional<Shelf> shelf = turn.books().lots().shelf(lot);
    if (shelf.isEmpty()) {
      return Optional.of(Doing.notOnFile("lot " + lot));
    }
    Shelf found = shelf.get();
    String name = found.lot().material() + " lot " + found.lot().code();
    if (found.lot().kind() != wanted.kind()) {
      return Optional.of(
          Outcome.refused(
              Reason.AMOUNT_IS_OF_ANOTHER_KIND,
              name + " is kept in " + found.onHand().usualUnit(),
              "give the amount in " + found.onHand().usualUnit()));
    }
    if (found.held()) {
      return Optional.of(
          Outcome.refused(
              Reason.IT_IS_HELD,
              name + " is on hold",
              "take another lot, or have the hold lifted by name"));
    }
    if (found.onHand().compareTo(wanted) < 0) {
      return Optional.of(
          Outcome.refused(
              Reason.LOT_WOULD_GO_NEGATIVE,
              name + " has " + Say.amount(found.onHand()) + ", " + Say.amount(wanted) + " asked",
              "draw less, take a second lot, or count this one"));
    }
    return Optional.empty();
  }

  /** One chosen lot, or first-expired-first-out when none is chosen. */
  static Draw from(Turn turn, String material, @Nullable Long lot, Amount wanted) {
    return lot == null
        ? planned(turn, material, wanted)
        : new Draw(List.of(new Line(lot, wanted)), Amount.none(wanted.kind()));
  }
}

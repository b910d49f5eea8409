package pourwright.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pourwright.material.ShelfLife;

/**
 * Which lots an amount is drawn from: the one that expires first, first; lots without a date last;
 * among equals an opened pack before a sealed one, then the one that came in first, then the lower
 * number. Held and expired lots are passed over.
 *
 * <p>Source: common practice (FEFO), no single source.
 */
public final class FirstExpiredFirstOut {
  private FirstExpiredFirstOut() {}

  /** An amount from one lot, positive. */
  public record Line(long lot, Amount amount) {}

  /**
   * What can be drawn and what is missing.
   *
   * @param lines amounts by lot, each positive, no lot twice
   * @param missing what no lot could give; none when all was found
   */
  public record Draw(List<Line> lines, Amount missing) {

    /** Keeps its own copy. */
    public Draw {
      lines = List.copyOf(lines);
    }

    /** What the lines add to. */
    public Amount drawn() {
      return lines.stream().map(Line::amount).reduce(Amount.none(missing.kind()), Amount::plus);
    }
  }

  private static Comparator<Shelf> order(ShelfLife life) {
    return Comparator.comparing((Shelf s) -> orLast(LastGood.day(s.lot(), life)))
        .thenComparing(s -> s.lot().openedOn() == null)
        .thenComparing(s -> s.lot().receivedOn())
        .thenComparing(s -> s.lot().id());
  }

  private static LocalDate orLast(@org.jspecify.annotations.Nullable LocalDate date) {
    return date == null ? LocalDate.MAX : date;
  }

  /** The shelves in the order they are drawn from, by the days printed on the packs. */
  public static List<Shelf> inOrder(List<Shelf> shelves) {
    return inOrder(shelves, ShelfLife.KEEPS);
  }

  /** The same, by the day each pack is good until: printed, or by how long its material keeps. */
  public static List<Shelf> inOrder(List<Shelf> shelves, ShelfLife life) {
    return shelves.stream().sorted(order(life)).toList();
  }

  /**
   * Draws an amount; never more than a lot holds and never below zero.
   *
   * @param shelves the lots of one material
   * @param wanted zero or more, of the lots' kind
   * @param today expired lots are passed over as of this day
   */
  public static Draw draw(List<Shelf> shelves, Amount wanted, LocalDate today) {
    return draw(shelves, wanted, today, ShelfLife.KEEPS);
  }

  /**
   * The same with the shelf life of the material: an opened pack whose days run out goes first. A
   * shelf life only says what goes first; only a day printed on the pack bars a lot.
   */
  public static Draw draw(List<Shelf> shelves, Amount wanted, LocalDate today, ShelfLife life) {
    if (wanted.isNegative()) {
      throw new IllegalArgumentException("a draw of less than nothing");
    }
    List<Line> lines = new ArrayList<>();
    Amount missing = wanted;
    for (Shelf shelf : inOrder(shelves, life)) {
      if (missing.isPositive() && shelf.isDrawable(today)) {
        Amount taken = shelf.onHand().min(missing);
        lines.add(new Line(shelf.lot().id(), taken));
        missing = missing.minus(taken);
      }
    }
    return new Draw(lines, missing);
  }
}

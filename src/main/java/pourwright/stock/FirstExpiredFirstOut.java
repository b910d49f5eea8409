package pourwright.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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

  private static final Comparator<Shelf> ORDER =
      Comparator.comparing((Shelf s) -> orLast(s.lot().expiresOn()))
          .thenComparing(s -> s.lot().openedOn() == null)
          .thenComparing(s -> s.lot().receivedOn())
          .thenComparing(s -> s.lot().id());

  private static LocalDate orLast(@org.jspecify.annotations.Nullable LocalDate date) {
    return date == null ? LocalDate.MAX : date;
  }

  /** The shelves in the order they are drawn from. */
  public static List<Shelf> inOrder(List<Shelf> shelves) {
    return shelves.stream().sorted(ORDER).toList();
  }

  /**
   * Draws an amount; never more than a lot holds and never below zero.
   *
   * @param shelves the lots of one material
   * @param wanted zero or more, of the lots' kind
   * @param today expired lots are passed over as of this day
   */
  public static Draw draw(List<Shelf> shelves, Amount wanted, LocalDate today) {
    if (wanted.isNegative()) {
      throw new IllegalArgumentException("a draw of less than nothing");
    }
    List<Line> lines = new ArrayList<>();
    Amount missing = wanted;
    for (Shelf shelf : inOrder(shelves)) {
      if (missing.isPositive() && shelf.isDrawable(today)) {
        Amount taken = shelf.onHand().min(missing);
        lines.add(new Line(shelf.lot().id(), taken));
        missing = missing.minus(taken);
      }
    }
    return new Draw(lines, missing);
  }
}

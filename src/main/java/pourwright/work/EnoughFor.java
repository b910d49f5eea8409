package pourwright.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.order.OrderLine;
import pourwright.plan.Explosion;
import pourwright.plan.Habits;
import pourwright.plan.InHand;
import pourwright.quantity.OutOfRange;
import pourwright.stock.Amount;

/**
 * What an amount of a material is enough for: candles of each design, from nothing in stock, with
 * the losses of the house. A dozen of each is worked out by the same explosion as the plan, and a
 * twelfth of it counts for one: what stays in bucket and pitcher is shared by the dozen.
 *
 * @param candle the design's name
 * @param pieces how many candles it is enough for
 */
public record EnoughFor(String candle, long pieces) {
  private static final int DOZEN = 12;
  private static final int SHOWN = 3;

  /**
   * The designs that need this material, the one it makes most of first; at most three.
   *
   * @param books as one transaction sees them
   * @param material its code
   * @param amount what is there
   * @param today the studio's day
   */
  public static List<EnoughFor> of(Books books, String material, Amount amount, LocalDate today) {
    CardBook book = Drawers.book(books);
    List<EnoughFor> found = new ArrayList<>();
    for (CandleDesign design : book.all(CandleDesign.class)) {
      double dozen = needOfADozen(book, design, material, today);
      if (dozen > 0) {
        long pieces = (long) Math.floor(amount.inUsualUnit() * DOZEN / dozen);
        found.add(new EnoughFor(design.name(), pieces));
      }
    }
    found.sort(Comparator.comparingLong(EnoughFor::pieces).reversed());
    return found.subList(0, Math.min(SHOWN, found.size()));
  }

  private static double needOfADozen(
      CardBook book, CandleDesign design, String material, LocalDate today) {
    OrderLine dozen = new OrderLine("enough", design.code(), 1, DOZEN, today.plusYears(1), null);
    try {
      return Explosion.of(List.of(dozen), book, InHand.nothing(today), Habits.HOUSE)
          .needs()
          .get(material);
    } catch (OutOfRange unfinished) {
      // a design whose cards are not complete yet tells nothing about need
      return 0;
    }
  }
}

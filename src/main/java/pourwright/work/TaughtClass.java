package pourwright.work;

import java.time.Instant;
import java.time.ZoneId;
import pourwright.card.CardBook;
import pourwright.plan.ClassDay;
import pourwright.plan.ClassKit;
import pourwright.plan.SeatClass;

/**
 * A class with its kits and its day, as the books stand.
 *
 * @param of the class
 * @param kit what is laid out
 * @param day what sets in it and what is posted later
 * @param spare share of kits to spare
 * @param book the cards it was worked out from
 */
public record TaughtClass(SeatClass of, ClassKit kit, ClassDay day, double spare, CardBook book) {
  /**
   * Works out a class.
   *
   * @throws pourwright.quantity.OutOfRange when a card or a material is missing
   */
  public static TaughtClass of(Books books, SeatClass of, Instant now, ZoneId zone) {
    CardBook book = Drawers.book(books);
    double spare = PlanSettings.spareShare(books);
    ClassDay day =
        ClassDay.of(of, book, PlanSettings.habits(books), WorkPlan.floor(books, book, now, zone));
    return new TaughtClass(of, ClassKit.of(of, book, spare), day, spare, book);
  }
}

package pourwright.page.now;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.card.CardBook;
import pourwright.order.OrderLine;
import pourwright.plan.Floor;
import pourwright.plan.Habits;
import pourwright.plan.LastDay;

/**
 * The last days to cast, each worked out once: it depends on what is ordered, the cards, the habits
 * and the hours, not on what happens meanwhile. A large order takes a second or two to lay out.
 */
final class LastDays {
  private record Of(String design, int count, @Nullable LocalDate due) {}

  private record Under(Habits habits, Floor floor) {}

  private final Map<Of, Optional<LocalDate>> known = new HashMap<>();
  private @Nullable CardBook book;
  private @Nullable Under under;

  /** As {@link LastDay#toCast}. */
  Optional<LocalDate> toCast(OrderLine line, CardBook cards, Habits habits, Floor floor) {
    Under now = new Under(habits, floor.from(Instant.EPOCH, floor.days()));
    if (book != cards || !now.equals(under)) { // the book is the same one while no card changes
      known.clear();
      book = cards;
      under = now;
    }
    Of what = new Of(line.design(), line.quantity(), line.dueOn());
    Optional<LocalDate> day = known.get(what);
    if (day == null) {
      day = LastDay.toCast(line, cards, habits, floor);
      known.put(what, day);
    }
    return day;
  }
}

package pourwright.page.now;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pourwright.card.CardBook;
import pourwright.main.DemoCards;
import pourwright.order.OrderLine;
import pourwright.plan.Floor;
import pourwright.plan.Habits;
import pourwright.plan.LastDay;

class LastDaysTest {
  private static final CardBook BOOK = DemoCards.book();
  private static final OrderLine LINE =
      new OrderLine("1", "cog-fig", 1, 3, LocalDate.of(2026, 6, 12), null);

  private final LastDays days = new LastDays();

  private static Floor floor(int day, String... hands) {
    return Floor.house(
        Instant.parse("2026-03-0" + day + "T08:00:00Z"),
        ZoneId.of("Europe/Berlin"),
        List.of(hands));
  }

  @Test
  void theSameDayIsToldAsTheForwardRuleFinds() {
    Optional<LocalDate> found = days.toCast(LINE, BOOK, Habits.HOUSE, floor(2, "MB"));
    assertThat(found)
        .isPresent()
        .isEqualTo(LastDay.toCast(LINE, BOOK, Habits.HOUSE, floor(2, "MB")));
  }

  @Test
  void aDayThatIsKnownIsNotWorkedOutAgainAnHourLater() {
    Optional<LocalDate> first = days.toCast(LINE, BOOK, Habits.HOUSE, floor(2, "MB"));
    assertThat(days.toCast(LINE, BOOK, Habits.HOUSE, floor(3, "MB"))).isSameAs(first);
  }

  @Test
  void otherHandsOrHabitsOrCardsMakeItBeWorkedOutAnew() {
    Optional<LocalDate> first = days.toCast(LINE, BOOK, Habits.HOUSE, floor(2, "MB"));
    Optional<LocalDate> two = days.toCast(LINE, BOOK, Habits.HOUSE, floor(2, "MB", "JS"));
    Habits wasteful = new Habits(0.2, 0.2, 30, 1e5, Habits.Hands.HOUSE, Habits.Waits.HOUSE);
    Optional<LocalDate> waste = days.toCast(LINE, BOOK, wasteful, floor(2, "MB", "JS"));
    Optional<LocalDate> cards = days.toCast(LINE, DemoCards.book(), wasteful, floor(2, "MB", "JS"));
    assertThat(two).isNotSameAs(first);
    assertThat(waste).isNotSameAs(two);
    assertThat(cards).isNotSameAs(waste).isEqualTo(waste);
  }
}

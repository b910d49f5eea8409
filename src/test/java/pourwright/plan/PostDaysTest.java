package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.card.CardBook;
import pourwright.main.DemoCards;
import pourwright.order.OrderLine;
import pourwright.quantity.OutOfRange;

/** When a parcel goes; the days of the week are those of the calendar, the rest is house. */
class PostDaysTest {
  private static LocalDate day(String text) {
    return LocalDate.parse(text);
  }

  @Test
  void nothingTypedMeansEveryDay() {
    PostDays post = PostDays.read("", " ", "");
    assertThat(post.onOrBefore(day("2026-07-19"))).isEqualTo(day("2026-07-19"));
  }

  @Test
  void aParcelOfASundayGoesOnTheFridayBefore() {
    // 19 July 2026 is a Sunday
    PostDays post = PostDays.read("mon tue wed thu fri", "", "");
    assertThat(post.onOrBefore(day("2026-07-19"))).isEqualTo(day("2026-07-17"));
  }

  @Test
  void noParcelIsOnItsWayOnAHotDay() {
    PostDays post = PostDays.read("", "2026-07-14, 2026-07-15", "");
    assertThat(post.onOrBefore(day("2026-07-13"))).isEqualTo(day("2026-07-11"));
    assertThat(post.onOrBefore(day("2026-07-15"))).isEqualTo(day("2026-07-11"));
    assertThat(post.onOrBefore(day("2026-07-16"))).isEqualTo(day("2026-07-16"));
  }

  @Test
  void afterTheLastPostNothingIsThereByTheFeast() {
    PostDays post = PostDays.read("", "", "2026-12-18 for 2026-12-24, 2027-03-24 for 2027-03-28");
    assertThat(post.onOrBefore(day("2026-12-22"))).isEqualTo(day("2026-12-18"));
    assertThat(post.onOrBefore(day("2026-12-17"))).isEqualTo(day("2026-12-17"));
    assertThat(post.onOrBefore(day("2026-12-28"))).isEqualTo(day("2026-12-28"));
    assertThat(post.onOrBefore(day("2027-03-27"))).isEqualTo(day("2027-03-24"));
  }

  @Test
  void whatCannotBeReadIsNamed() {
    assertThatThrownBy(() -> PostDays.read("mo", "", ""))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("'mo' is no weekday");
    assertThatThrownBy(() -> PostDays.read("", "14.7.", "")).hasMessageContaining("is no day");
    assertThatThrownBy(() -> PostDays.read("", "", "2026-12-18"))
        .hasMessageContaining("is no last post");
  }

  @Test
  void anOrderIsDueOnTheLastDayItsParcelCanGo() {
    CardBook book = DemoCards.book();
    Floor floor =
        Floor.house(
                Instant.parse("2026-03-02T07:00:00Z"), ZoneId.of("Europe/Berlin"), List.of("MB"))
            .with(PostDays.read("fri", "", ""));
    OrderLine line = new OrderLine("1", "cog-fig", 1, 2, day("2026-05-20"), null);
    MakePlan make =
        Explosion.of(List.of(line), book, InHand.nothing(day("2026-03-02")), Habits.HOUSE);
    PlanProblem problem = Routing.of(make, book, Habits.HOUSE, floor);
    // 20 May 2026 is a Wednesday, the Friday before is the 15th; its end is the 16th at midnight
    assertThat(problem.clock(problem.goals().get(0).dueMin()).toLocalDateTime())
        .isEqualTo(day("2026-05-16").atStartOfDay());
  }

  @Test
  void aColdShedMovesTheDayByAsMuchAsItsWaitsGrow() {
    CardBook book = DemoCards.book();
    OrderLine line = new OrderLine("1", "cog-fig", 1, 2, day("2026-05-20"), null);
    Floor floor =
        Floor.house(
            Instant.parse("2026-03-02T07:00:00Z"), ZoneId.of("Europe/Berlin"), List.of("MB"));
    Habits cold = Habits.HOUSE.in(new Habits.Shed(2, 3));
    List<LastDay.Leg> warm = LastDay.way(line, book, Habits.HOUSE, floor);
    List<LastDay.Leg> slow = LastDay.way(line, book, cold, floor);
    for (int i = 0; i < warm.size(); i++) {
      String words = warm.get(i).words();
      int times = words.startsWith("Dry") ? 3 : words.matches("(Set: \\d.*|Harden.*)") ? 2 : 1;
      assertThat(slow.get(i).minutes()).as(words).isEqualTo(times * warm.get(i).minutes());
    }
  }
}

package pourwright.plan;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pourwright.card.CardBook;
import pourwright.main.DemoCards;
import pourwright.order.OrderLine;
import pourwright.quantity.OutOfRange;

/** A class is an order of seats: kits, hands, what sets in it and what is posted later. */
class ClassKitTest {
  private static final CardBook BOOK = DemoCards.book();
  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
  private static final Instant ORIGIN = Instant.parse("2026-03-02T07:00:00Z");
  private static final Floor FLOOR = Floor.house(ORIGIN, ZONE, List.of("MB"));
  private static final LocalDate DAY = LocalDate.of(2026, 3, 10); // a Tuesday

  private static SeatClass seats(SeatClass.Does does, int seats, int from, int to) {
    return new SeatClass(
        "K", "bollard-rain", does, seats, DAY, LocalTime.of(from, 0), LocalTime.of(to, 0), "MB");
  }

  @Test
  void oneTenthMoreKitsInWholeKits() {
    // 10 x 1.1 = 11; 12 x 1.1 = 13.2, so 14; one tenth: house, common practice, no source
    assertThat(ClassKit.kits(10, 0.10)).isEqualTo(11);
    assertThat(ClassKit.kits(12, 0.10)).isEqualTo(14);
    assertThat(ClassKit.kits(1, 0.10)).isEqualTo(2);
    assertThat(ClassKit.kits(10, 0)).isEqualTo(10);
    for (int seats = 1; seats <= 100; seats++) {
      assertThat(ClassKit.kits(seats, 0.10)).isEqualTo((11 * seats + 9) / 10);
    }
    assertThatThrownBy(() -> ClassKit.kits(10, 2)).isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> seats(SeatClass.Does.CAST, 10, 13, 10)).isInstanceOf(OutOfRange.class);
  }

  @Test
  void whatTheKitsNeedStandsAmongTheNeedsAndTheShortages() {
    ClassKit kit = ClassKit.of(seats(SeatClass.Does.CAST, 12, 10, 13), BOOK, 0.10);
    assertThat(kit.kits()).isEqualTo(14);
    assertThat(kit.waterG()).isPositive();
    MakePlan make =
        Explosion.of(List.of(), List.of(kit), BOOK, InHand.nothing(DAY.minusDays(8)), Habits.HOUSE);
    assertThat(make.casts()).isEmpty();
    assertThat(make.pours()).isEmpty();
    kit.perHead()
        .byMaterial()
        .forEach(
            (code, one) -> {
              assertThat(make.needs().get(code)).isEqualTo(14 * one, within(1e-6));
              assertThat(make.shortages()).as("nothing is in stock").containsKey(code);
            });
  }

  @Test
  void vesselsToPourIntoAreCastBeforeAndDueWhenTheClassBegins() {
    ClassKit kit = ClassKit.of(seats(SeatClass.Does.POUR, 4, 10, 13), BOOK, 0.10);
    assertThat(kit.vessels()).isEqualTo(5);
    VesselKind kind = VesselKind.of(BOOK.candle("bollard-rain"));
    InHand three = new InHand(Map.of(), Map.of(kind, 3), Map.of(), DAY.minusDays(8));
    MakePlan make = Explosion.of(List.of(), List.of(kit), BOOK, three, Habits.HOUSE);
    assertThat(make.pours()).as("it is poured in the class").isEmpty();
    assertThat(make.casts().stream().mapToInt(CastJob::pieces).sum()).isEqualTo(2);
    PlanProblem problem = Routing.of(make, BOOK, Habits.HOUSE, FLOOR);
    assertThat(problem.goals()).hasSize(make.casts().size());
    Instant begin = DAY.atTime(10, 0).atZone(ZONE).toInstant();
    assertThat(problem.goals().get(0).dueMin()).isEqualTo(problem.minuteOf(begin));
  }

  @Test
  void theTeachersHandsAndTheMoldsAreTakenForTheClass() {
    SeatClass taught = seats(SeatClass.Does.CAST, 2, 10, 15);
    Floor floor = FLOOR.teaching(List.of(taught));
    OrderLine line = new OrderLine("1", "bollard-rain", 1, 6, DAY.plusDays(50), null);
    MakePlan make =
        Explosion.of(
            List.of(line),
            List.of(ClassKit.of(taught, BOOK, 0.10)),
            BOOK,
            InHand.nothing(DAY.minusDays(8)),
            Habits.HOUSE);
    PlanProblem problem = Routing.of(make, BOOK, Habits.HOUSE, floor);
    int from = problem.minuteOf(DAY.atTime(10, 0).atZone(ZONE).toInstant());
    List<Window> hours = problem.people().iterator().next().windows();
    assertThat(hours).noneMatch(w -> w.fromMin() < from + 300 && w.toMin() > from);
    assertThat(hours)
        .as("the hour before and the hours after are left")
        .contains(new Window(from - 60, from), new Window(from + 300, from + 480));
    Plan plan = ForwardRuleTest.planned(problem);
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
    assertThat(plan.at("K1/class").startMin()).isEqualTo(from);
    assertThat(requireNonNull(problem.stepsByKey().get("K1/class")).uses())
        .hasSize(1)
        .containsValue(2);
  }

  @Test
  void aClassThatPoursHasTheMelterAndOneThatDoesNotSetKeepsItsMolds() {
    for (SeatClass.Does does : SeatClass.Does.values()) {
      SeatClass hour = seats(does, 2, 10, 11);
      MakePlan make =
          Explosion.of(
              List.of(),
              List.of(ClassKit.of(hour, BOOK, 0.10)),
              BOOK,
              InHand.nothing(DAY.minusDays(8)),
              Habits.HOUSE);
      PlanProblem problem = Routing.of(make, BOOK, Habits.HOUSE, FLOOR.teaching(List.of(hour)));
      Map<String, Step> steps = problem.stepsByKey();
      boolean cast = does == SeatClass.Does.CAST;
      assertThat(requireNonNull(steps.get("K1/class")).uses().containsKey(Routing.MELTER))
          .isEqualTo(!cast);
      assertThat(steps.containsKey("K1/set")).isEqualTo(cast);
      if (cast) { // 17 min of work and 90 min to set, of them 60 in class
        assertThat(requireNonNull(steps.get("K1/set")).minutes()).isEqualTo(47);
      }
      assertThat(PlanChecker.check(problem, ForwardRuleTest.planned(problem))).isEmpty();
    }
  }

  @Test
  void whatSetsInClassIsTakenOutThereAndTheRestIsToldStepByStep() {
    // rapid mix: demold from 1.5 h (house value of the card, no source); 17 min to mix and fill
    ClassDay three = ClassDay.of(seats(SeatClass.Does.CAST, 4, 10, 13), BOOK, Habits.HOUSE, FLOOR);
    assertThat(three.workMin()).isEqualTo(17);
    assertThat(three.setMin()).isEqualTo(90);
    assertThat(three.sets()).isTrue();
    assertThat(three.later()).noneMatch(l -> l.words().startsWith("Demold"));
    assertThat(three.later().get(0).words()).startsWith("Harden damp");
    assertThat(three.later().get(0).done().toLocalTime()).isEqualTo(LocalTime.of(17, 0));
    ClassDay one = ClassDay.of(seats(SeatClass.Does.CAST, 4, 10, 11), BOOK, Habits.HOUSE, FLOOR);
    assertThat(one.sets()).isFalse();
    assertThat(one.later().get(0).words()).startsWith("Set");
    assertThat(one.later().get(1).words()).startsWith("Demold");
    int waits = three.later().stream().mapToInt(ClassDay.Leg::minutes).sum();
    assertThat(three.parcelDay()).isAfterOrEqualTo(DAY.plusDays(waits / 1440));
    assertThat(three.later()).isSortedAccordingTo((a, b) -> a.done().compareTo(b.done()));
    PostDays fridays = new PostDays(EnumSet.of(DayOfWeek.FRIDAY), Set.of(), List.of());
    ClassDay posted =
        ClassDay.of(seats(SeatClass.Does.CAST, 4, 10, 13), BOOK, Habits.HOUSE, FLOOR.with(fridays));
    assertThat(posted.parcelDay().getDayOfWeek()).isEqualTo(DayOfWeek.FRIDAY);
    assertThat(posted.parcelDay()).isBetween(three.parcelDay(), three.parcelDay().plusDays(6));
  }

  @Test
  void aPouredCandleRestsAfterTheClass() {
    // wax sets 12 h and rests 12 d: house values of the cards, no source
    ClassDay day = ClassDay.of(seats(SeatClass.Does.POUR, 4, 10, 13), BOOK, Habits.HOUSE, FLOOR);
    assertThat(day.sets()).isFalse();
    assertThat(day.later())
        .extracting(l -> l.words().split("[: ]", 2)[0])
        .containsExactly("Set", "Level", "Rest", "Check,");
    assertThat(day.parcelDay()).isAfterOrEqualTo(DAY.plusDays(12));
    assertThat(ClassDay.of(seats(SeatClass.Does.POUR, 4, 10, 11), BOOK, Habits.HOUSE, FLOOR))
        .satisfies(hour -> assertThat(hour.warnings()).hasSize(1));
  }
}

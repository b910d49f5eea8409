package pourwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pourwright.card.Amounts;
import pourwright.card.CardBook;
import pourwright.main.DemoCards;
import pourwright.order.OrderLine;
import pourwright.plan.ClassKit;
import pourwright.plan.Explosion;
import pourwright.plan.Floor;
import pourwright.plan.ForwardRule;
import pourwright.plan.Habits;
import pourwright.plan.InHand;
import pourwright.plan.MakePlan;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanChecker;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;
import pourwright.plan.PourJob;
import pourwright.plan.Routing;
import pourwright.plan.RunningPour;
import pourwright.plan.SeatClass;
import pourwright.plan.VesselKind;

/** A class and pours under way through the solver: accepted by the checker and by the audit. */
class ClassesAndPoursPlannedTest {
  private static final CardBook BOOK = DemoCards.book();
  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

  /** A Monday, 9 in the morning. */
  private static final Instant ORIGIN = Instant.parse("2026-03-02T08:00:00Z");

  private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
  private static final Floor FLOOR = Floor.house(ORIGIN, ZONE, List.of("MB"));
  private static final String CANDLE = "bollard-rain";

  private static Plan planned(PlanProblem problem) {
    Planner.Effort effort =
        new Planner.Effort(Duration.ofSeconds(4), 1, 1, null, better -> {}, () -> false);
    Planner.Outcome outcome = new CpSatPlanner(new ForwardRule()).plan(problem, effort);
    assertThat(outcome).isInstanceOf(Planner.Planned.class);
    Plan plan = ((Planner.Planned) outcome).plan();
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
    return plan;
  }

  @Test
  void noHandsAndNoMoldAreInTheClassAndVesselsForItAreReadyWhenItBegins() {
    // in six weeks, from ten to one: vessels are cast, sealed and tight by then
    LocalDate day = TODAY.plusDays(43);
    SeatClass taught =
        new SeatClass(
            "K",
            CANDLE,
            SeatClass.Does.POUR,
            3,
            day,
            LocalTime.of(10, 0),
            LocalTime.of(13, 0),
            "MB");
    OrderLine line = new OrderLine("1", CANDLE, 1, 3, day.plusDays(30), null);
    Floor floor = FLOOR.teaching(List.of(taught));
    MakePlan make =
        Explosion.of(
            List.of(line),
            List.of(ClassKit.of(taught, BOOK, 0.10)),
            BOOK,
            InHand.nothing(TODAY),
            Habits.HOUSE);
    PlanProblem problem = Routing.of(make, BOOK, Habits.HOUSE, floor);
    Plan plan = planned(problem);
    int from = problem.minuteOf(day.atTime(10, 0).atZone(ZONE).toInstant());
    assertThat(plan.at("K1/class")).isEqualTo(new Placed("K1/class", from, from + 180, null));
    for (Placed placed : plan.placed()) {
      boolean hands = placed.person() != null;
      assertThat(hands && placed.startMin() < from + 180 && placed.endMin() > from)
          .as(placed.step() + " in the class")
          .isFalse();
    }
    assertThat(plan.tardiness(problem)).as("vessels and order in time").isZero();
    assertThat(make.classes().get(0).after()).isNotEmpty();
    for (String cast : make.classes().get(0).after()) {
      int ready =
          plan.placed().stream()
              .filter(p -> p.step().startsWith(cast + "/"))
              .mapToInt(Placed::endMin)
              .max()
              .orElseThrow();
      assertThat(ready).isLessThanOrEqualTo(from);
    }
  }

  @Test
  void moltenWaxIsPouredFirstAndNothingIsMadeTwice() {
    VesselKind kind = VesselKind.of(BOOK.candle(CANDLE));
    RunningPour melting =
        new RunningPour(
            "B7",
            BOOK.candle(CANDLE).pour(),
            List.of(new PourJob.Fill(CANDLE, 3, 0)),
            Amounts.NONE,
            RunningPour.Stage.MELTING,
            -30);
    RunningPour setting =
        new RunningPour(
            "B6",
            BOOK.candle(CANDLE).pour(),
            List.of(new PourJob.Fill(CANDLE, 2, 0)),
            Amounts.NONE,
            RunningPour.Stage.SETTING,
            -13 * 60);
    InHand there =
        new InHand(
            Map.of(), Map.of(kind, 4), List.of(), List.of(setting, melting), Map.of(), TODAY);
    OrderLine line = new OrderLine("1", CANDLE, 1, 9, TODAY.plusDays(40), null);
    MakePlan make = Explosion.of(List.of(line), BOOK, there, Habits.HOUSE);
    assertThat(make.casts()).isEmpty();
    assertThat(make.pours().stream().mapToInt(PourJob::candles).sum()).isEqualTo(4);
    assertThat(make.served().get(0).pours()).startsWith("B6", "B7");
    PlanProblem problem = Routing.of(make, BOOK, Habits.HOUSE, FLOOR);
    Plan plan = planned(problem);
    assertThat(plan.at("B7/melt").startMin()).isEqualTo(-30);
    // molten at minute 30, in its window for 45 minutes (house)
    assertThat(plan.at("B7/pour").startMin()).isBetween(30, 30 + 45);
    assertThat(plan.at("B7/set").startMin()).isEqualTo(plan.at("B7/pour").endMin());
    assertThat(plan.at("B6/set").endMin()).isEqualTo(-60);
    assertThat(plan.at("P1/melt").startMin()).isGreaterThanOrEqualTo(plan.at("B7/pour").endMin());
    assertThat(plan.tardiness(problem)).isZero();
  }
}

package pourwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.card.CardBook;
import pourwright.main.DemoCards;
import pourwright.order.OrderLine;
import pourwright.plan.Explosion;
import pourwright.plan.Floor;
import pourwright.plan.ForwardRule;
import pourwright.plan.Habits;
import pourwright.plan.InHand;
import pourwright.plan.NextBurn;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanChecker;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;
import pourwright.plan.Routing;

/** Burn tests stand in the plan: watched, rested, and never more lit than she may watch. */
class NextBurnTest {
  private static final CardBook BOOK = DemoCards.book();
  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

  /** A Monday, 9 in the morning: she works from 9 to 12:30 and from 13:30 to 18. */
  private static final Instant ORIGIN = Instant.parse("2026-03-02T08:00:00Z");

  private static final Floor FLOOR = Floor.house(ORIGIN, ZONE, List.of("MB"));

  private static PlanProblem problem(List<OrderLine> lines, NextBurn.Sample... samples) {
    InHand nothing = InHand.nothing(LocalDate.of(2026, 3, 2));
    NextBurn burn = new NextBurn("T5", "Cog, Fig loft", List.of(samples));
    return Routing.of(
        Explosion.of(lines, BOOK, nothing, Habits.HOUSE), List.of(burn), BOOK, Habits.HOUSE, FLOOR);
  }

  private static Plan plan(Planner planner, PlanProblem problem) {
    Planner.Outcome outcome = planner.plan(problem, Planner.Effort.of(Duration.ofSeconds(4)));
    assertThat(outcome).isInstanceOf(Planner.Planned.class);
    Plan plan = ((Planner.Planned) outcome).plan();
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
    return plan;
  }

  private static Placed burn(Plan plan, int nth) {
    return java.util.Objects.requireNonNull(plan.byStep().get("T5/burn-" + nth));
  }

  private static LocalTime clock(PlanProblem problem, int minute) {
    return problem.clock(minute).toLocalTime();
  }

  private static Planner planner(String which) {
    return which.equals("quick") ? new ForwardRule() : CpSatPlanner.alone();
  }

  @ParameterizedTest
  @ValueSource(strings = {"quick", "solver"})
  void aCycleBurnsInTheAfternoonBecauseNobodyWatchesItOverNoon(String which) {
    PlanProblem problem = problem(List.of(), new NextBurn.Sample("A", 0, null));
    Placed burn = burn(plan(planner(which), problem), 1);
    assertThat(burn.endMin() - burn.startMin()).isEqualTo(NextBurn.CYCLE_MIN);
    assertThat(problem.clock(burn.startMin()).toLocalDate()).isEqualTo("2026-03-02");
    assertThat(clock(problem, burn.startMin()))
        .isBetween(LocalTime.of(13, 30), LocalTime.of(14, 0));
  }

  @ParameterizedTest
  @ValueSource(strings = {"quick", "solver"})
  void aCandleThatRestsUntilTheAfternoonIsOverIsLitTheNextDay(String which) {
    PlanProblem problem = problem(List.of(), new NextBurn.Sample("A", 6 * 60, null)); // 15:00
    assertThat(problem.clock(burn(plan(planner(which), problem), 1).startMin()).toLocalDate())
        .isEqualTo("2026-03-03");
  }

  @ParameterizedTest
  @ValueSource(strings = {"quick", "solver"})
  void noMoreThanSixBurnAtOnce(String which) {
    List<NextBurn.Sample> eight = new ArrayList<>();
    for (int i = 1; i <= 8; i++) {
      eight.add(new NextBurn.Sample("" + i, 0, null));
    }
    PlanProblem problem = problem(List.of(), eight.toArray(NextBurn.Sample[]::new));
    Plan plan = plan(planner(which), problem);
    List<Placed> burns =
        plan.placed().stream().filter(p -> p.step().startsWith("T5/burn-")).toList();
    assertThat(burns).hasSize(8);
    for (Placed one : burns) {
      assertThat(burns)
          .filteredOn(b -> b.startMin() <= one.startMin() && one.startMin() < b.endMin())
          .hasSizeLessThanOrEqualTo(NextBurn.LIT_MOST);
    }
  }

  @Test
  void whatBurnsNowGoesOnAndWhatIsOverIsNotPlanned() {
    PlanProblem problem =
        problem(List.of(), new NextBurn.Sample("A", 0, -60), new NextBurn.Sample("B", 0, -4 * 60));
    assertThat(problem.steps()).singleElement().satisfies(s -> assertThat(s.begun()).isTrue());
    assertThat(burn(plan(new ForwardRule(), problem), 1).endMin()).isEqualTo(180);
  }

  @ParameterizedTest
  @ValueSource(strings = {"quick", "solver"})
  void anOrderIsNotLaterForATest(String which) {
    OrderLine line = new OrderLine("1", "cog-fig", 1, 3, LocalDate.of(2026, 6, 1), null);
    PlanProblem problem = problem(List.of(line), new NextBurn.Sample("A", 0, null));
    assertThat(plan(planner(which), problem).tardiness(problem)).isZero();
  }
}

package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pourwright.card.CardBook;
import pourwright.main.DemoCards;
import pourwright.order.OrderLine;

/** Orders become steps that a studio of one person can really do. */
class RoutingTest {
  private static final CardBook BOOK = DemoCards.book();
  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
  private static final Instant ORIGIN = Instant.parse("2026-03-02T07:00:00Z");
  private static final Floor FLOOR = Floor.house(ORIGIN, ZONE, List.of("MB"));

  private static PlanProblem problem(List<OrderLine> lines) {
    MakePlan make =
        Explosion.of(lines, BOOK, InHand.nothing(LocalDate.of(2026, 3, 2)), Habits.HOUSE);
    return Routing.of(make, BOOK, Habits.HOUSE, FLOOR);
  }

  @Test
  void fortyLinesArePlannedByTheForwardRuleWithinASecondAndTheCheckerAgrees() {
    PlanProblem problem = problem(ExplosionTest.fortyLines(1));
    long began = System.nanoTime();
    Plan plan = ForwardRuleTest.planned(problem);
    long millis = (System.nanoTime() - began) / 1_000_000;
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
    assertThat(plan.placed()).hasSameSizeAs(problem.steps());
    assertThat(millis).as("first usable plan, in ms").isLessThan(3000);
  }

  @Test
  void anOrderOfTwoBollardsWaitsForEveryWaitOnItsCards() {
    // rapid mix: 1.5 h to demold, 4 h damp, 72 h dry, coats, 168 h full-dry, 24 h water, 48 h dry
    // again; wax sets 12 h and rests 12 d: house values of the cards, no source
    OrderLine line = new OrderLine("1", "bollard-rain", 1, 2, LocalDate.of(2026, 5, 1), null);
    PlanProblem problem = problem(List.of(line));
    Plan plan = ForwardRuleTest.planned(problem);
    assertThat(gap(plan, "C1/cast", "C1/demold")).isGreaterThanOrEqualTo(90);
    assertThat(gap(plan, "C1/demold", "C1/sand")).isGreaterThanOrEqualTo(240);
    assertThat(gap(plan, "C1/sand", "C1/coat1")).isGreaterThanOrEqualTo(72 * 60);
    assertThat(gap(plan, "C1/coat1", "C1/coat2")).isBetween(120, 1440);
    assertThat(gap(plan, "C1/coat2", "C1/fill")).isGreaterThanOrEqualTo(168 * 60);
    assertThat(gap(plan, "C1/fill", "C1/empty")).isBetween(24 * 60, 48 * 60);
    assertThat(gap(plan, "C1/empty", "P1/wick")).isGreaterThanOrEqualTo(48 * 60);
    assertThat(gap(plan, "P1/melt", "P1/pour")).isBetween(0, 45);
    assertThat(gap(plan, "P1/trim", "P1/box")).isGreaterThanOrEqualTo(12 * 1440);
    assertThat(plan.tardiness(problem)).isZero();
  }

  private static int gap(Plan plan, String before, String after) {
    return plan.at(after).startMin() - plan.at(before).endMin();
  }

  @Test
  void theLastDayToCastHoldsAndTheDayAfterDoesNot() {
    OrderLine line = new OrderLine("1", "cog-fig", 1, 3, LocalDate.of(2026, 6, 12), null);
    LocalDate last = LastDay.toCast(line, BOOK, Habits.HOUSE, FLOOR).orElseThrow();
    assertThat(end(line, last)).isBeforeOrEqualTo(LocalDate.of(2026, 6, 12));
    for (int later = 1; later <= 7; later++) {
      assertThat(end(line, last.plusDays(later))).isAfter(LocalDate.of(2026, 6, 12));
    }
    int minutes =
        LastDay.way(line, BOOK, Habits.HOUSE, FLOOR).stream().mapToInt(LastDay.Leg::minutes).sum();
    // the whole wait is often 5 to 7 weeks from cast to parcel: common practice, no source
    assertThat(Duration.ofMinutes(minutes).toDays()).isBetween(21L, 60L);
    assertThat(Duration.between(last.atStartOfDay(), LocalDate.of(2026, 6, 13).atStartOfDay()))
        .isGreaterThan(Duration.ofMinutes(minutes));
  }

  private static LocalDate end(OrderLine line, LocalDate from) {
    Floor floor = Floor.house(from.atStartOfDay(ZONE).toInstant(), ZONE, List.of("MB"));
    MakePlan make = Explosion.of(List.of(line), BOOK, InHand.nothing(from), Habits.HOUSE);
    PlanProblem problem = Routing.of(make, BOOK, Habits.HOUSE, floor);
    Plan plan = ForwardRuleTest.planned(problem);
    int last = plan.placed().stream().mapToInt(Placed::endMin).max().orElse(0);
    return problem.clock(last - 1).toLocalDate();
  }

  @Test
  void longWorkOfHandsIsCutIntoStretches() {
    OrderLine line = new OrderLine("1", "trough-rain", 1, 12, LocalDate.of(2026, 7, 1), null);
    Habits manyAtOnce = new Habits(0, 0, 30, 1e5, Habits.Hands.HOUSE, Habits.Waits.HOUSE);
    MakePlan make =
        Explosion.of(
            List.of(line),
            BOOK,
            new InHand(
                Map.of(),
                Map.of(new VesselKind("trough", "grey", "two-coats"), 12),
                Map.of(),
                LocalDate.of(2026, 3, 2)),
            manyAtOnce);
    PlanProblem problem = Routing.of(make, BOOK, manyAtOnce, FLOOR);
    // 48 wicks at 2.5 minutes are 120 minutes: one stretch; boxes 48 minutes
    assertThat(problem.steps()).allMatch(s -> s.kind() != StepKind.HANDS || s.minutes() <= 120);
    assertThat(PlanChecker.check(problem, ForwardRuleTest.planned(problem))).isEmpty();
  }
}

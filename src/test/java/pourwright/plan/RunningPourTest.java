package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pourwright.card.Amounts;
import pourwright.card.CardBook;
import pourwright.main.DemoCards;
import pourwright.order.OrderLine;
import pourwright.plan.RunningPour.Stage;

/** A pour under way is not made twice; its hands, its wax and its rest are planned. */
class RunningPourTest {
  private static final CardBook BOOK = DemoCards.book();
  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

  /** A Monday, 9 in the morning: she begins at 9. */
  private static final Instant ORIGIN = Instant.parse("2026-03-02T08:00:00Z");

  private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
  private static final Floor FLOOR = Floor.house(ORIGIN, ZONE, List.of("MB"));
  private static final OrderLine LINE =
      new OrderLine("1", "cog-fig", 1, 3, LocalDate.of(2026, 6, 1), null);

  private static RunningPour pour(String key, int candles, Stage stage, int sinceMin) {
    return new RunningPour(
        key,
        BOOK.candle("cog-fig").pour(),
        List.of(new PourJob.Fill("cog-fig", candles, 0)),
        Amounts.NONE,
        stage,
        sinceMin);
  }

  private static MakePlan make(RunningPour... poured) {
    InHand there = new InHand(Map.of(), Map.of(), List.of(), List.of(poured), Map.of(), TODAY);
    return Explosion.of(List.of(LINE), BOOK, there, Habits.HOUSE);
  }

  private static PlanProblem problem(MakePlan make) {
    return Routing.of(make, BOOK, Habits.HOUSE, FLOOR);
  }

  private static String names(PlanProblem problem) {
    return problem.steps().stream()
        .map(s -> s.key().substring(s.key().indexOf('/') + 1))
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @EnumSource(Stage.class)
  void whatIsLeftIsPlannedAndNothingIsMadeTwice(Stage stage) {
    MakePlan make = make(pour("B7", 3, stage, -30));
    assertThat(make.casts()).isEmpty();
    assertThat(make.pours()).isEmpty();
    assertThat(make.served().get(0).pours()).containsExactly("B7");
    PlanProblem problem = problem(make);
    String left =
        switch (stage) {
          case WICKING -> "wick melt pour set trim rest box";
          case WICKED, MELTING, MELTED -> "melt pour set trim rest box";
          case SETTING -> "set trim rest box";
          case RESTING -> "rest box";
        };
    assertThat(names(problem)).isEqualTo(left);
    assertThat(problem.goals()).singleElement().extracting(Goal::lastStep).isEqualTo("B7/box");
    Plan plan = ForwardRuleTest.planned(problem);
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
  }

  @Test
  void aMeltBegunAtHalfPastEightIsPouredWhenItIsWarmAndTheRestFollows() {
    // begun 30 minutes ago, 60 to melt: warm at minute 30. Pour: 3 candles; set 12 h from there,
    // trim when it is set and she is there, rest as the card says, from the trim on
    PlanProblem problem = problem(make(pour("B7", 3, Stage.MELTING, -30)));
    Plan plan = ForwardRuleTest.planned(problem);
    assertThat(plan.at("B7/melt").startMin()).isEqualTo(-30);
    assertThat(plan.at("B7/melt").endMin()).isEqualTo(30);
    assertThat(plan.at("B7/pour").startMin()).isEqualTo(30);
    assertThat(plan.at("B7/set").startMin()).isEqualTo(plan.at("B7/pour").endMin());
    assertThat(plan.at("B7/set").endMin() - plan.at("B7/set").startMin()).isEqualTo(12 * 60);
    // set in the night: trimmed with the first hands of Tuesday, 24 h after Monday's
    assertThat(plan.at("B7/trim").startMin()).isEqualTo(24 * 60);
    assertThat(plan.at("B7/rest").startMin()).isEqualTo(plan.at("B7/trim").endMin());
    int rest = plan.at("B7/rest").endMin() - plan.at("B7/rest").startMin();
    assertThat(rest).isEqualTo((int) (BOOK.pour(BOOK.candle("cog-fig").pour()).restDays() * 1440));
    assertThat(plan.at("B7/box").startMin()).isGreaterThanOrEqualTo(plan.at("B7/rest").endMin());
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
  }

  @Test
  void waxThatWasLeftMoltenOverNightIsPouredFirstThing() {
    // molten since eight in the evening before; the 45 minutes have gone
    PlanProblem problem = problem(make(pour("B7", 3, Stage.MELTED, -13 * 60)));
    Plan plan = ForwardRuleTest.planned(problem);
    assertThat(plan.at("B7/melt").endMin()).isEqualTo(-13 * 60);
    assertThat(plan.at("B7/pour").startMin()).isZero();
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
  }

  @Test
  void whatIsMissingIsPouredBesideIt() {
    MakePlan make = make(pour("B7", 2, Stage.RESTING, -60));
    assertThat(make.pours()).singleElement().extracting(PourJob::candles).isEqualTo(1);
    assertThat(make.served().get(0).pours()).containsExactly("B7", "P1");
  }

  @Test
  void theMelterIsNotWarmedForAnotherScentWhileItHoldsThisOne() {
    OrderLine other = new OrderLine("2", "bollard-rain", 1, 2, LocalDate.of(2026, 3, 4), null);
    VesselKind kind = VesselKind.of(BOOK.candle("bollard-rain"));
    InHand there =
        new InHand(
            Map.of(),
            Map.of(kind, 2),
            List.of(),
            List.of(pour("B7", 3, Stage.MELTING, -1)),
            Map.of(),
            TODAY);
    MakePlan make = Explosion.of(List.of(other, LINE), BOOK, there, Habits.HOUSE);
    PlanProblem problem = problem(make);
    Plan plan = ForwardRuleTest.planned(problem);
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
    int washed = plan.at("B7/pour").endMin() + Habits.HOUSE.waits().wash();
    assertThat(plan.at("P1/melt").startMin()).isGreaterThanOrEqualTo(washed);
  }

  @Test
  void moltenWaxIsPouredBeforeLongWorkOfHandsIsTakenUp() {
    VesselKind kind = VesselKind.of(BOOK.candle("cog-fig"));
    RunningCast hardened =
        new RunningCast("B5", kind, 40, RunningCast.Stage.HARDENING, -40 * 1440); // long to sand
    OrderLine soon = new OrderLine("0", "cog-fig", 1, 43, LocalDate.of(2026, 3, 20), null);
    InHand there =
        new InHand(
            Map.of(),
            Map.of(),
            List.of(hardened),
            List.of(pour("B7", 3, Stage.MELTED, -1)),
            Map.of(),
            TODAY);
    MakePlan make = Explosion.of(List.of(soon), BOOK, there, Habits.HOUSE);
    PlanProblem problem = problem(make);
    Plan plan = ForwardRuleTest.planned(problem);
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
    assertThat(plan.at("B7/pour").startMin()).isLessThanOrEqualTo(45);
  }

  @Test
  void twoMeltsAtOnceAreAFactAndNoContradiction() {
    RunningPour one = pour("B7", 2, Stage.MELTED, -5);
    RunningPour two = pour("B8", 1, Stage.MELTING, -20);
    PlanProblem problem = problem(make(one, two));
    assertThat(PlanChecker.check(problem, ForwardRuleTest.planned(problem))).isEmpty();
  }

  @Test
  void whatIsStillToBeDrawnForItIsTakenOffTheShelfFirst() {
    String wax =
        BOOK.pour(BOOK.candle("cog-fig").pour())
            .resolve(BOOK.materials())
            .melt(100)
            .materials()
            .byMaterial()
            .keySet()
            .iterator()
            .next();
    RunningPour begun =
        new RunningPour(
            "B7",
            BOOK.candle("cog-fig").pour(),
            List.of(new PourJob.Fill("cog-fig", 3, 0)),
            Amounts.of(wax, 250),
            Stage.WICKED,
            -30);
    MakePlan make = make(begun);
    assertThat(make.needs().get(wax)).isEqualTo(250);
    assertThat(make.picks()).singleElement().extracting(MakePlan.Pick::batch).isEqualTo("B7");
    assertThat(make.shortages()).containsOnlyKeys(wax);
  }

  @Test
  void aRestThatNobodyAsksForIsLeftAlone() {
    InHand there =
        new InHand(
            Map.of(),
            Map.of(),
            List.of(),
            List.of(pour("B7", 3, Stage.RESTING, -60), pour("B8", 3, Stage.SETTING, -60)),
            Map.of(),
            TODAY);
    MakePlan make = Explosion.of(List.of(), BOOK, there, Habits.HOUSE);
    assertThat(make.poured()).extracting(RunningPour::key).containsExactly("B8");
  }
}

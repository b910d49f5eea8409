package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pourwright.card.CardBook;
import pourwright.main.DemoCards;
import pourwright.order.OrderLine;
import pourwright.plan.RunningCast.Stage;

/** A cast under way stays where it is; its vessels are used when the rest of its way is over. */
class RunningCastTest {
  private static final CardBook BOOK = DemoCards.book();
  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
  private static final Instant ORIGIN = Instant.parse("2026-03-02T07:00:00Z");
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
  private static final Floor FLOOR = Floor.house(ORIGIN, ZONE, List.of("MB"));
  private static final OrderLine LINE =
      new OrderLine("1", "cog-fig", 1, 3, LocalDate.of(2026, 6, 1), null);

  private static MakePlan make(List<RunningCast> running) {
    InHand there = new InHand(Map.of(), Map.of(), running, Map.of(), TODAY);
    return Explosion.of(List.of(LINE), BOOK, there, Habits.HOUSE);
  }

  private static RunningCast cast(int pieces, Stage stage, int sinceMin) {
    VesselKind kind = VesselKind.of(BOOK.candle("cog-fig"));
    return new RunningCast("B7 cog", kind, pieces, stage, sinceMin);
  }

  @ParameterizedTest
  @EnumSource(Stage.class)
  void theRestOfItsWayIsPlannedAndNothingIsCastAnew(Stage stage) {
    MakePlan make = make(List.of(cast(3, stage, -600)));
    assertThat(make.casts()).isEmpty();
    assertThat(make.pours().get(0).after()).containsExactly("B7 cog");
    PlanProblem problem = Routing.of(make, BOOK, Habits.HOUSE, FLOOR);
    Plan plan = ForwardRuleTest.planned(problem);
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
    List<Step> own = problem.steps().stream().filter(s -> s.batch().equals("B7 cog")).toList();
    assertThat(own).isNotEmpty();
    int over = plan.at(own.get(own.size() - 1).key()).endMin();
    assertThat(plan.at("P1/wick").startMin()).isGreaterThanOrEqualTo(over);
    if (stage != Stage.HARDENED) {
      assertThat(plan.at(own.get(0).key()).startMin()).isEqualTo(-600);
    }
  }

  @Test
  void theFurtherACastIsTheSoonerItsCandlesAreThere() {
    int last = Integer.MAX_VALUE;
    for (Stage stage : Stage.values()) {
      PlanProblem problem =
          Routing.of(make(List.of(cast(3, stage, -60))), BOOK, Habits.HOUSE, FLOOR);
      int end = ForwardRuleTest.planned(problem).at("P1/box").endMin();
      assertThat(end).as(stage.toString()).isLessThanOrEqualTo(last);
      last = end;
    }
  }

  @Test
  void whatIsMissingIsCastBesideIt() {
    MakePlan make = make(List.of(cast(2, Stage.HARDENING, -60)));
    assertThat(make.casts()).hasSize(1);
    assertThat(make.casts().get(0).pieces()).isEqualTo(1);
    assertThat(make.pours().get(0).after()).containsExactlyInAnyOrder("B7 cog", "C1");
  }

  @Test
  void aMoldThatIsStillFullIsNotCastInto() {
    int cogs = BOOK.moldsFor("cog").stream().mapToInt(m -> m.count() * m.piecesPerCast()).sum();
    RunningCast full = cast(cogs, Stage.SETTING, -1);
    OrderLine more = new OrderLine("1", "cog-fig", 1, cogs + 1, LocalDate.of(2026, 6, 1), null);
    InHand there = new InHand(Map.of(), Map.of(), List.of(full), Map.of(), TODAY);
    MakePlan make = Explosion.of(List.of(more), BOOK, there, Habits.HOUSE);
    PlanProblem problem = Routing.of(make, BOOK, Habits.HOUSE, FLOOR);
    Plan plan = ForwardRuleTest.planned(problem);
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
    assertThat(plan.at("C1/cast").startMin())
        .isGreaterThanOrEqualTo(plan.at("B7 cog/demold").endMin());
  }

  @Test
  void aCastForgottenInItsMoldIsTakenOutAsSoonAsSomebodyIsThere() {
    // the card says when it must be out of the mold; that has gone for a week
    MakePlan make = make(List.of(cast(3, Stage.SETTING, -20 * 1440)));
    PlanProblem problem = Routing.of(make, BOOK, Habits.HOUSE, FLOOR);
    Plan plan = ForwardRuleTest.planned(problem);
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
    assertThat(problem.clock(plan.at("B7 cog/demold").startMin()).toLocalDate()).isEqualTo(TODAY);
  }
}

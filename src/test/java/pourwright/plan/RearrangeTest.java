package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.plan.Rearrange.Change;

/** Moving by hand, asking why, and seeing what moved. */
class RearrangeTest {
  private static final int HOUR = 60;
  private static final Step MIX = Step.hands("C1", "mix", "Mix and fill C1", 60);
  private static final Step SET = Step.wait("C1", "set", "Set C1", 3 * HOUR);
  private static final Step DEMOLD = Step.hands("C1", "demold", "Demold C1", 30);
  private static final Step BURN = Step.watch("T1", "burn", "Burn test of Ferry", 2 * HOUR);
  private static final PlanProblem PROBLEM =
      new PlanProblem(
          Instant.parse("2026-03-02T00:00:00Z"),
          ZoneOffset.UTC,
          2880,
          List.of(Resource.person("hands", "Marta", List.of(new Window(9 * HOUR, 17 * HOUR)))),
          List.of(MIX, SET, DEMOLD, BURN),
          List.of(
              new Link(MIX.key(), SET.key(), 0, 0, "it sets from the pour"),
              new Link(SET.key(), DEMOLD.key(), 0, 4 * HOUR, "demold while the mold lets go")),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          30);
  private static final Plan PLAN =
      new Plan(
          List.of(
              new Placed(MIX.key(), 9 * HOUR, 10 * HOUR, "hands"),
              new Placed(SET.key(), 10 * HOUR, 13 * HOUR, null),
              new Placed(DEMOLD.key(), 13 * HOUR, 13 * HOUR + 30, "hands"),
              new Placed(BURN.key(), 12 * HOUR, 14 * HOUR, null)));

  @Test
  void aMoveByHandTakesAlongWhatIsTiedAndSaysWhatBreaks() {
    Rearrange.Moved fine = Rearrange.move(PROBLEM, PLAN, DEMOLD.key(), 15 * HOUR);
    assertThat(fine.breaks()).isEmpty();
    Rearrange.Moved late = Rearrange.move(PROBLEM, PLAN, MIX.key(), 10 * HOUR);
    assertThat(late.plan().byStep().get(SET.key())).extracting(Placed::startMin).isEqualTo(660);
    assertThat(late.breaks())
        .extracting(PlanChecker.Finding::sentence)
        .singleElement()
        .asString()
        .contains("Demold C1")
        .contains("demold while the mold lets go");
  }

  @Test
  void aBurnMovedIntoTheEveningIsRefusedByName() {
    assertThat(Rearrange.move(PROBLEM, PLAN, BURN.key(), 16 * HOUR).breaks())
        .extracting(PlanChecker.Finding::sentence)
        .anySatisfy(s -> assertThat(s).contains("Burn test of Ferry").contains("nobody there"));
  }

  @Test
  void everyStepCanSayWhyItIsWhereItIs() {
    assertThat(Rearrange.why(PROBLEM, PLAN, MIX.key()))
        .singleElement()
        .asString()
        .contains("outside the hours of Marta");
    assertThat(Rearrange.why(PROBLEM, PLAN, DEMOLD.key()))
        .singleElement()
        .asString()
        .contains("Demold C1 comes -1 minutes after Set C1");
    assertThat(Rearrange.why(PROBLEM, PLAN, BURN.key()))
        .containsExactly("No rule holds it there; the plan keeps it for few and short days.");
  }

  @Test
  void whatMovedIsListedInOrder() {
    Plan after = Rearrange.move(PROBLEM, PLAN, BURN.key(), 14 * HOUR).plan();
    assertThat(Rearrange.changes(PROBLEM, PLAN, after))
        .containsExactly(new Change(BURN.key(), "Burn test of Ferry", 12 * HOUR, 14 * HOUR));
    assertThat(Rearrange.changes(PROBLEM, PLAN, after).get(0).later()).isEqualTo(2 * HOUR);
  }
}

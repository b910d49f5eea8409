package pourwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pourwright.plan.ForwardRule;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanChecker;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner.Effort;
import pourwright.plan.Planner.Outcome;
import pourwright.plan.Planner.Planned;
import pourwright.plan.Step;

/**
 * Every plan of every invented studio keeps every rule, before the checker of the craft and before
 * an audit that shares no code with either; and none is later than the forward rule's.
 */
class RandomStudiosTest {
  private static void plannedAndChecked(int fromSeed, int toSeed) {
    for (int seed = fromSeed; seed < toSeed; seed++) {
      PlanProblem studio = Studios.studio(seed, 1 + seed % 5, 1 + seed % 3, 1 + seed % 2);
      Effort effort = Effort.of(Duration.ofMillis(300));
      Outcome outcome = CpSatPlanner.usual().plan(studio, effort);
      Outcome forward = new ForwardRule().plan(studio, effort);
      assertThat(outcome).as("seed " + seed).isInstanceOf(Planned.class);
      assertThat(forward).as("seed " + seed).isInstanceOf(Planned.class);
      Planned planned = (Planned) outcome;
      assertThat(PlanChecker.check(studio, planned.plan())).as("seed " + seed).isEmpty();
      assertThat(PlanAudit.of(studio, planned.plan())).as("seed " + seed).isEmpty();
      assertThat(planned.plan().tardiness(studio))
          .as("seed " + seed)
          .isLessThanOrEqualTo(((Planned) forward).plan().tardiness(studio));
      nothingHotWithoutAPerson(studio, planned.plan(), seed);
      for (Map.Entry<String, Plan> one : BrokenPlans.of(studio, planned.plan()).entrySet()) {
        assertThat(PlanChecker.check(studio, one.getValue()))
            .as(seed + ": " + one.getKey())
            .isNotEmpty();
      }
    }
  }

  /** Asked of the minutes themselves: each minute of a hot step lies in somebody's hours. */
  private static void nothingHotWithoutAPerson(PlanProblem studio, Plan plan, int seed) {
    Map<String, Step> steps = studio.stepsByKey();
    for (Placed placed : plan.placed()) {
      Step step = steps.get(placed.step());
      if (step != null && step.hot()) {
        for (int minute = placed.startMin(); minute < placed.endMin(); minute++) {
          int at = minute;
          assertThat(studio.people())
              .as(seed + ": " + step.words() + " at " + studio.clock(at))
              .anyMatch(
                  p -> p.windows().stream().anyMatch(w -> w.fromMin() <= at && at < w.toMin()));
        }
      }
    }
  }

  @Test
  void fortyStudiosArePlannedWithoutBreakingARule() {
    plannedAndChecked(0, 40);
  }

  @Test
  void aBurnThroughTheNightIsRejectedByName() {
    PlanProblem studio = Studios.studio(3, 3, 2, 1);
    Planned planned = (Planned) new ForwardRule().plan(studio, Effort.of(Duration.ofSeconds(1)));
    Plan night =
        Objects.requireNonNull(
            BrokenPlans.of(studio, planned.plan()).get("something hot goes through the night"));
    assertThat(PlanChecker.check(studio, night))
        .extracting(f -> f.sentence())
        .anyMatch(s -> s.contains("Melt P") && s.contains("nobody"));
  }

  @Test
  @Tag("long")
  void fiveHundredStudiosArePlannedWithoutBreakingARule() {
    plannedAndChecked(100, 600);
  }
}

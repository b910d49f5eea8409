package pourwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pourwright.plan.ForwardRule;
import pourwright.plan.PlanChecker;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner.Effort;
import pourwright.plan.Planner.Outcome;
import pourwright.plan.Planner.Planned;

/**
 * Every plan of every invented studio keeps every rule, before the checker of the craft and before
 * an audit that shares no code with either; and none is later than the forward rule's.
 */
class RandomStudiosTest {
  private static void plannedAndChecked(int fromSeed, int toSeed) {
    for (int seed = fromSeed; seed < toSeed; seed++) {
      PlanProblem studio = Studios.studio(seed, 1 + seed % 5, 1 + seed % 3, 1 + seed % 2);
      Effort effort = Effort.of(Duration.ofMillis(300));
      Outcome outcome = new CpSatPlanner(new ForwardRule()).plan(studio, effort);
      Outcome forward = new ForwardRule().plan(studio, effort);
      assertThat(outcome).as("seed " + seed).isInstanceOf(Planned.class);
      assertThat(forward).as("seed " + seed).isInstanceOf(Planned.class);
      Planned planned = (Planned) outcome;
      assertThat(PlanChecker.check(studio, planned.plan())).as("seed " + seed).isEmpty();
      assertThat(PlanAudit.of(studio, planned.plan())).as("seed " + seed).isEmpty();
      assertThat(planned.plan().tardiness(studio))
          .as("seed " + seed)
          .isLessThanOrEqualTo(((Planned) forward).plan().tardiness(studio));
    }
  }

  @Test
  void fortyStudiosArePlannedWithoutBreakingARule() {
    plannedAndChecked(0, 40);
  }

  @Test
  @Tag("long")
  void fiveHundredStudiosArePlannedWithoutBreakingARule() {
    plannedAndChecked(100, 600);
  }
}

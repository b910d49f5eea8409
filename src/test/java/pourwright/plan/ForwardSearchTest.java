package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Many orders of batches are never worse than one; invented studios, no published figures. */
class ForwardSearchTest {
  private static final Planner.Effort EFFORT = Planner.Effort.of(Duration.ofMinutes(1));

  private static Plan plan(Planner planner, PlanProblem problem) {
    return ((Planner.Planned) planner.plan(problem, EFFORT)).plan();
  }

  @Test
  void aSearchedPlanKeepsEveryRuleAndIsNeverLaterThanTheRule() {
    for (int seed = 1; seed <= 20; seed++) {
      PlanProblem problem = RandomStudios.problem(seed);
      Plan rule = plan(new ForwardRule(), problem);
      Plan searched = plan(new ForwardSearch(40), problem);
      assertThat(PlanChecker.check(problem, searched)).as("seed " + seed).isEmpty();
      assertThat(searched.tardiness(problem))
          .as("seed " + seed)
          .isLessThanOrEqualTo(rule.tardiness(problem));
      if (searched.tardiness(problem) == rule.tardiness(problem)) {
        assertThat(TouchCount.of(problem, searched).sum())
            .as("seed " + seed)
            .isLessThanOrEqualTo(TouchCount.of(problem, rule).sum());
      }
    }
  }

  @Test
  void theSameProblemIsPlannedTheSameWayAgain() {
    PlanProblem problem = RandomStudios.problem(7);
    assertThat(plan(new ForwardSearch(60), problem))
        .isEqualTo(plan(new ForwardSearch(60), problem));
  }

  @Test
  void aPartWithFewerGoalsIsNeverLaterAndKeepsOnlyWhatThoseHangOn() {
    for (int seed = 1; seed <= 10; seed++) {
      PlanProblem problem = RandomStudios.problem(seed);
      Goal first = problem.goals().get(0);
      PlanProblem part = PartOfProblem.of(problem, java.util.List.of(first));
      assertThat(part.steps()).allMatch(s -> s.batch().equals("C1") || s.batch().equals("P1"));
      assertThat(part.steps()).hasSizeLessThan(problem.steps().size());
      Plan whole = plan(new ForwardRule(), problem);
      assertThat(PlanChecker.check(part, PartOfProblem.within(part, whole))).isEmpty();
    }
  }

  @Test
  void whatIsPinnedStaysWhereItWas() {
    PlanProblem problem = RandomStudios.problem(3);
    PlanProblem part = PartOfProblem.of(problem, java.util.List.of(problem.goals().get(0)));
    Plan held = plan(new ForwardRule(), part);
    Plan whole = plan(new ForwardRule(), PartOfProblem.pinned(problem, held));
    assertThat(whole.placed()).containsAll(held.placed());
    assertThat(PlanChecker.check(problem, whole)).isEmpty();
  }
}

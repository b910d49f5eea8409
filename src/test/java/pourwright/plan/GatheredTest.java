package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.plan.Planner.Effort;
import pourwright.plan.Planner.Planned;

/** Touches and late hours, counted by hand; the hours and minutes are invented. */
class GatheredTest {
  private static final int DAY = 1440;

  /** Two coats two hours apart, a day to dry, a look; hours 9 to 18 for four days. */
  private static PlanProblem twoCoats(int coatMinutes) {
    List<Window> hours =
        List.of(
            new Window(0, 540),
            new Window(DAY, DAY + 540),
            new Window(2 * DAY, 2 * DAY + 540),
            new Window(3 * DAY, 3 * DAY + 540));
    Step one = Step.hands("C1", "coat1", "First coat", coatMinutes);
    Step two = Step.hands("C1", "coat2", "Second coat", coatMinutes);
    Step dry = Step.wait("C1", "dry", "Dry", DAY);
    Step look = Step.hands("C1", "look", "Look", 10);
    return new PlanProblem(
        Instant.parse("2026-09-07T07:00:00Z"),
        ZoneId.of("Europe/Berlin"),
        4 * DAY,
        List.of(Resource.person("hands:A", "A", hours)),
        List.of(one, two, dry, look),
        List.of(
            new Link(one.key(), two.key(), 120, DAY, "recoat window"),
            new Link(two.key(), dry.key(), 0, 0, "dries at once"),
            new Link(dry.key(), look.key(), 0, null, "looked at when dry")),
        List.of(),
        List.of(new Goal("g", "an order", look.key(), 4 * DAY, 1)),
        List.of(),
        List.of(),
        30);
  }

  private static Plan at(PlanProblem problem, int... starts) {
    List<Placed> placed = new java.util.ArrayList<>();
    for (int i = 0; i < starts.length; i++) {
      Step step = problem.steps().get(i);
      String who = step.kind() == StepKind.HANDS ? "hands:A" : null;
      placed.add(new Placed(step.key(), starts[i], starts[i] + step.minutes(), who));
    }
    return new Plan(placed);
  }

  @Test
  void twoCoatsOnOneDayAreOneTouchAndOnTwoDaysTwo() {
    PlanProblem problem = twoCoats(30);
    Plan together = at(problem, 0, 150, 180, DAY + 180);
    Plan apart = at(problem, 390, DAY, DAY + 30, 2 * DAY + 30);
    assertThat(PlanChecker.check(problem, together)).isEmpty();
    assertThat(PlanChecker.check(problem, apart)).isEmpty();
    assertThat(TouchCount.of(problem, together)).isEqualTo(new TouchCount(2, 0));
    assertThat(TouchCount.of(problem, apart)).isEqualTo(new TouchCount(3, 0));
    assertThat(TouchCount.of(problem, together).sum()).isEqualTo(30);
    assertThat(Gathered.least(problem)).isEqualTo(30);
  }

  @Test
  void workPastTheSeventhHourCounts() {
    PlanProblem problem = twoCoats(30);
    Plan evening = at(problem, 270, 420, 450, DAY + 450);
    assertThat(PlanChecker.check(problem, evening)).isEmpty();
    assertThat(TouchCount.of(problem, evening)).isEqualTo(new TouchCount(2, 40));
  }

  @Test
  void whatDoesNotFitIntoSevenHoursIsATouchMoreOrALateHour() {
    // 160 + 120 + 160 = 440 minutes: a day of nine hours holds it, one of seven does not; a touch
    // more is 15 minutes, the second coat in the evening 160
    assertThat(Gathered.least(twoCoats(160))).isEqualTo(45);
    // 240 + 120 + 240 = 600 minutes: no day holds it
    assertThat(Gathered.least(twoCoats(240))).isEqualTo(45);
  }

  @Test
  void whatIsLaidForTheGatheredProblemIsAPlanOfTheProblemWithNoMoreTouches() {
    int found = 0;
    for (int seed = 1; seed <= 20; seed++) {
      PlanProblem problem = RandomStudios.problem(seed);
      Effort effort = Effort.of(Duration.ofSeconds(5));
      Plan rule = ((Planned) new ForwardRule().plan(problem, effort)).plan();
      long least = Gathered.least(problem);
      assertThat(TouchCount.of(problem, rule).sum()).isGreaterThanOrEqualTo(least);
      if (new ForwardRule().plan(Gathered.of(problem), effort) instanceof Planned gathered) {
        found++;
        assertThat(PlanChecker.check(problem, gathered.plan())).as("seed " + seed).isEmpty();
        assertThat(TouchCount.of(problem, gathered.plan()).sum())
            .as("seed " + seed)
            .isGreaterThanOrEqualTo(least)
            .isLessThanOrEqualTo(TouchCount.of(problem, rule).sum());
      }
    }
    assertThat(found).isGreaterThan(10);
  }

  @Test
  void fewerDaysAreNeitherLaterNorTouchedMoreOften() {
    int fewer = 0;
    for (int seed = 1; seed <= 10; seed++) {
      PlanProblem problem = RandomStudios.problem(seed);
      Plan rule =
          ((Planned) new ForwardRule().plan(problem, Effort.of(Duration.ofSeconds(5)))).plan();
      Plan closed = new FewerDays(problem, problem).from(rule, () -> false);
      assertThat(PlanChecker.check(problem, closed)).as("seed " + seed).isEmpty();
      assertThat(closed.tardiness(problem)).isLessThanOrEqualTo(rule.tardiness(problem));
      assertThat(TouchCount.of(problem, closed).sum())
          .isLessThanOrEqualTo(TouchCount.of(problem, rule).sum());
      assertThat(DayCount.of(problem, closed).sum())
          .isLessThanOrEqualTo(DayCount.of(problem, rule).sum());
      fewer += DayCount.of(problem, closed).days() < DayCount.of(problem, rule).days() ? 1 : 0;
    }
    assertThat(fewer).isGreaterThan(3);
  }
}

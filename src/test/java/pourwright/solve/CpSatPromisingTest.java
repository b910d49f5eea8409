package pourwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pourwright.plan.Goal;
import pourwright.plan.Link;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner.Effort;
import pourwright.plan.Planner.Planned;
import pourwright.plan.Promise;
import pourwright.plan.Promise.Holds;
import pourwright.plan.Resource;
import pourwright.plan.Resource.Kind;
import pourwright.plan.Span;
import pourwright.plan.Step;
import pourwright.plan.Window;

/** Promises in small studios that are planned to proof. */
class CpSatPromisingTest {
  private static final Effort EFFORT =
      new Effort(Duration.ofSeconds(20), 1, 1, null, p -> {}, () -> false);
  private static final Plan NOTHING = new Plan(List.of());

  /** Orders of one cast each in one kind of mold; the last order is the new one. */
  private static PlanProblem studio(long seed, int molds, int newDueMin) {
    Random random = new Random(seed);
    List<Step> steps = new ArrayList<>();
    List<Link> links = new ArrayList<>();
    List<Span> spans = new ArrayList<>();
    List<Goal> goals = new ArrayList<>();
    int orders = 2 + random.nextInt(2);
    for (int o = 0; o < orders; o++) {
      String c = "C" + o;
      Step mix = Step.hands(c, "mix", "Mix and fill " + c, 30 + 15 * random.nextInt(4));
      Step demold = Step.hands(c, "demold", "Demold " + c, 30);
      Step pack = Step.hands(c, "pack", "Pack " + c, 60);
      steps.addAll(List.of(mix, demold, pack));
      links.add(new Link(mix.key(), demold.key(), 600, 1800, "demold while the mold lets go"));
      links.add(new Link(demold.key(), pack.key(), 1440, null, "it hardens for a day"));
      spans.add(new Span("mold", 1, mix.key(), demold.key()));
      boolean isNew = o == orders - 1;
      goals.add(new Goal(isNew ? "new" : "order " + o, c, pack.key(), isNew ? newDueMin : 7000, 1));
    }
    List<Window> hours = new ArrayList<>();
    for (int day = 0; day < 8; day++) {
      hours.add(new Window(day * 1440 + 540, day * 1440 + 720 + 60 * random.nextInt(4)));
    }
    return new PlanProblem(
        Instant.parse("2026-06-01T00:00:00Z"),
        ZoneOffset.UTC,
        8 * 1440,
        List.of(
            Resource.always("mold", "Ferry mold", Kind.MOLD, molds),
            Resource.person("hands", "Marta", hours)),
        steps,
        links,
        spans,
        goals,
        List.of(),
        List.of(),
        30);
  }

  private static Holds promise(PlanProblem problem) {
    Promise promise = new CpSatPromising().earliest(problem, "new", NOTHING, EFFORT);
    assertThat(promise).isInstanceOf(Holds.class);
    Holds holds = (Holds) promise;
    assertThat(holds.proven()).isTrue();
    assertThat(PlanAudit.of(problem, holds.plan())).isEmpty();
    return holds;
  }

  @Test
  void thePromisedMinuteHoldsInAnIndependentPlanAndTheMinuteBeforeDoesNot() {
    thePromiseIsExact(1, 6);
  }

  @Test
  @Tag("long")
  void fortyPromisesAreExact() {
    thePromiseIsExact(7, 46);
  }

  private static void thePromiseIsExact(int first, int last) {
    for (int seed = first; seed <= last; seed++) {
      int end = promise(studio(seed, 1, 0)).endMin();
      Planned kept = (Planned) CpSatPlanner.alone().plan(studio(seed, 1, end), EFFORT);
      Planned missed = (Planned) CpSatPlanner.alone().plan(studio(seed, 1, end - 1), EFFORT);
      assertThat(kept.plan().tardiness(studio(seed, 1, end))).as("seed " + seed).isZero();
      assertThat(missed.boundMin()).as("seed " + seed).isPositive();
    }
  }

  @Test
  void oneMoreMoldNeverMakesThePromiseLater() {
    moldsNeverHarm(1, 6);
  }

  @Test
  @Tag("long")
  void oneMoreMoldNeverMakesAnyOfFortyPromisesLater() {
    moldsNeverHarm(7, 46);
  }

  private static void moldsNeverHarm(int first, int last) {
    for (int seed = first; seed <= last; seed++) {
      int one = promise(studio(seed, 1, 0)).endMin();
      int two = promise(studio(seed, 2, 0)).endMin();
      int three = promise(studio(seed, 3, 0)).endMin();
      assertThat(two).as("seed " + seed).isLessThanOrEqualTo(one);
      assertThat(three).as("seed " + seed).isLessThanOrEqualTo(two);
    }
  }

  @Test
  void whatWouldHelpIsNamedWithWhatItBuys() {
    PlanProblem crowded = studio(2, 1, 0);
    List<Goal> urgent = new ArrayList<>();
    for (Goal goal : crowded.goals()) { // the others leave as soon as one mold lets them
      urgent.add(
          new Goal(
              goal.key(), goal.words(), goal.lastStep(), goal.key().equals("new") ? 0 : 5300, 1));
    }
    PlanProblem problem =
        new PlanProblem(
            crowded.origin(),
            crowded.zone(),
            crowded.horizonMin(),
            crowded.resources(),
            crowded.steps(),
            crowded.links(),
            crowded.spans(),
            urgent,
            crowded.apart(),
            crowded.washings(),
            30);
    Holds holds = promise(problem);
    assertThat(holds.gains()).extracting(Promise.Gain::remedy).contains("one more Ferry mold");
    assertThat(holds.gains()).allMatch(gain -> gain.minutesEarlier() > 0);
  }

  @Test
  void aPromiseThatWouldBreakAnotherIsNotGiven() {
    PlanProblem problem = studio(3, 1, 0);
    List<Goal> impossible = new ArrayList<>();
    for (Goal goal : problem.goals()) {
      impossible.add(new Goal(goal.key(), goal.words(), goal.lastStep(), 60, 1));
    }
    PlanProblem hard =
        new PlanProblem(
            problem.origin(),
            problem.zone(),
            problem.horizonMin(),
            problem.resources(),
            problem.steps(),
            problem.links(),
            problem.spans(),
            impossible,
            problem.apart(),
            problem.washings(),
            30);
    assertThat(new CpSatPromising().earliest(hard, "new", NOTHING, EFFORT))
        .isInstanceOf(Promise.None.class);
  }
}

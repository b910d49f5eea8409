package pourwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import pourwright.plan.Goal;
import pourwright.plan.Link;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;
import pourwright.plan.Planner.Effort;
import pourwright.plan.Planner.Impossible;
import pourwright.plan.Planner.Planned;
import pourwright.plan.Resource;
import pourwright.plan.Resource.Kind;
import pourwright.plan.Span;
import pourwright.plan.Step;
import pourwright.plan.Window;

/** Small studios whose best plan one can see; all lengths of time are house values. */
class CpSatPlannerTest {
  private static final ZoneId ROME = ZoneId.of("Europe/Rome");
  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;

  private final List<Resource> things = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final List<Span> spans = new ArrayList<>();
  private final List<Goal> goals = new ArrayList<>();
  private LocalDateTime origin = LocalDateTime.of(2026, 3, 2, 0, 0);
  private List<Window> hours = List.of(work(0), work(1), work(2), work(3), work(4));

  private static Window work(int day) {
    return new Window(day * DAY + 9 * HOUR, day * DAY + 17 * HOUR);
  }

  private Step step(Step step) {
    steps.add(step);
    return step;
  }

  private void then(Step before, Step after, int min, @Nullable Integer max, String reason) {
    links.add(new Link(before.key(), after.key(), min, max, reason));
  }

  private PlanProblem problem() {
    List<Resource> resources = new ArrayList<>(things);
    resources.add(Resource.person("hands", "Marta", hours));
    Instant start = origin.atZone(ROME).toInstant();
    return new PlanProblem(
        start,
        ROME,
        6 * DAY,
        resources,
        steps,
        links,
        spans,
        goals,
        List.of(),
        List.of(),
        PlanProblem.LAST_HOT_START_MIN);
  }

  private static Planned planned(PlanProblem problem, @Nullable Plan keep) {
    Effort effort = new Effort(Duration.ofSeconds(8), 1, 1, keep, p -> {}, () -> false);
    Planner.Outcome outcome = CpSatPlanner.alone().plan(problem, effort);
    assertThat(outcome).isInstanceOf(Planned.class);
    Planned planned = (Planned) outcome;
    assertThat(PlanAudit.of(problem, planned.plan())).isEmpty();
    assertThat(planned.proven()).isTrue();
    return planned;
  }

  private static int start(Planned planned, Step step) {
    Placed placed = planned.plan().byStep().get(step.key());
    return placed == null ? -1 : placed.startMin();
  }

  @Test
  void aTwelveHourWaitIsTwelveHoursOnTheNightTheClocksChange() {
    origin = LocalDateTime.of(2026, 3, 28, 0, 0);
    ZoneId zone = ROME;
    Instant from = origin.atZone(zone).toInstant();
    hours = new ArrayList<>();
    for (int d = 0; d < 3; d++) { // Sunday 29 March has 23 hours: its clock times come sooner
      LocalDateTime day = origin.plusDays(d);
      hours.add(new Window(minute(from, day.withHour(7)), minute(from, day.withHour(21))));
    }
    Step seal = step(Step.hands("C1", "seal", "Seal the Bollards", 30));
    Step dry = step(Step.wait("C1", "dry", "Dry the first coat", 12 * HOUR));
    Step second = step(Step.hands("C1", "second", "Second coat", 30));
    then(seal, dry, 0, 0, "drying begins with the coat");
    then(dry, second, 0, 60, "the recoat window");
    goals.add(new Goal("g", "order 1", second.key(), 0, 1));
    steps.set(0, seal.notBefore(19 * HOUR));
    PlanProblem problem = problem();
    Planned planned = planned(problem, null);
    // Begun on Saturday 19:00, dry 7:30 standing for 8:30 by the clock of summer.
    assertThat(start(planned, seal)).isEqualTo(19 * HOUR);
    assertThat(start(planned, second) - start(planned, dry)).isEqualTo(12 * HOUR);
    assertThat(problem.clock(start(planned, second)).toLocalDateTime())
        .isEqualTo(LocalDateTime.of(2026, 3, 29, 8, 30));
  }

  private static int minute(Instant from, LocalDateTime at) {
    return (int) Duration.between(from, at.atZone(ROME).toInstant()).toMinutes();
  }

  @Test
  void aWaitWithAnEndIsNotBegunWhenItsEndFallsOnADayOff() {
    hours = List.of(work(0), work(2), work(3), work(4)); // Tuesday is off
    Step mix = step(Step.hands("C1", "mix", "Mix and fill", 60));
    Step demold = step(Step.hands("C1", "demold", "Demold", 30));
    then(mix, demold, 18 * HOUR, 26 * HOUR, "demold while the mold lets go");
    goals.add(new Goal("g", "order 1", demold.key(), 0, 1));
    Planned planned = planned(problem(), null);
    // Monday's cast would have to be demolded on Tuesday; Wednesday's comes out on Thursday.
    assertThat(start(planned, mix)).isEqualTo(2 * DAY + 9 * HOUR);
    assertThat(start(planned, demold)).isEqualTo(3 * DAY + 9 * HOUR);
  }

  @Test
  void aDateThatCannotBeKeptIsMissedByAsLittleAsCanBe() {
    Step mix = step(Step.hands("C1", "mix", "Mix and fill", 60));
    Step harden = step(Step.wait("C1", "harden", "Harden", DAY));
    Step pack = step(Step.hands("C1", "pack", "Pack", 30));
    then(mix, harden, 0, 0, "hardening begins at the cast");
    then(harden, pack, 0, null, "pack when it is hard");
    goals.add(new Goal("g", "order 1", pack.key(), DAY, 1));
    Planned planned = planned(problem(), null);
    // Monday 9:00 to 10:00, hard on Tuesday 10:00, packed 10:30: 10.5 h after the date.
    assertThat(planned.plan().tardiness(problem())).isEqualTo(10 * HOUR + 30);
    assertThat(planned.boundMin()).isEqualTo(10 * HOUR + 30);
  }

  @Test
  void afterAFailedCastTheRestMovesAsLittleAsCanBe() {
    things.add(Resource.always("mold", "Bollard mold", Kind.MOLD, 1));
    Step done = step(Step.hands("C1", "mix", "Mix and fill C1", 60).fixedAt(-5 * HOUR));
    Step again = step(Step.hands("C2", "mix", "Mix and fill C2", 60));
    Step demold = step(Step.hands("C2", "demold", "Demold C2", 30));
    Step tidy = step(Step.hands("P1", "trim", "Trim P1", 60));
    Step label = step(Step.hands("P1", "label", "Label P1", 60));
    then(again, demold, 4 * HOUR, 20 * HOUR, "demold while the mold lets go");
    spans.add(new Span("mold", 1, again.key(), demold.key()));
    goals.add(new Goal("g", "order 1", demold.key(), 17 * HOUR, 1));
    Plan was =
        new Plan(
            List.of(
                new Placed(tidy.key(), 9 * HOUR, 10 * HOUR, "hands"),
                new Placed(label.key(), 10 * HOUR, 11 * HOUR, "hands")));
    Planned planned = planned(problem(), was);
    assertThat(start(planned, done)).isEqualTo(-5 * HOUR);
    assertThat(start(planned, tidy)).isEqualTo(9 * HOUR);
    assertThat(start(planned, label)).isEqualTo(10 * HOUR);
    assertThat(start(planned, again)).isEqualTo(11 * HOUR);
    assertThat(start(planned, demold)).isEqualTo(16 * HOUR);
  }

  @Test
  void aBurnThroughTheNightIsRefusedByName() {
    step(Step.watch("T1", "burn", "Burn test of Ferry, cycle 3", 4 * HOUR).fixedAt(15 * HOUR));
    Planner.Outcome outcome =
        CpSatPlanner.alone().plan(problem(), Effort.of(Duration.ofSeconds(5)));
    assertThat(outcome).isInstanceOf(Impossible.class);
    assertThat(((Impossible) outcome).reasons())
        .containsExactlyInAnyOrder(
            "Burn test of Ferry, cycle 3 is fixed at 2026-03-02T15:00", "hours of Marta");
  }

  @Test
  void anImpossiblePlanNamesTheRulesInConflictAndNoOthers() {
    things.add(Resource.always("mold", "Trough mold", Kind.MOLD, 1));
    things.add(Resource.always("rack", "drying rack", Kind.PLACE, 1));
    for (String cast : List.of("C1", "C2")) {
      Step mix = step(Step.hands(cast, "mix", "Mix " + cast, 30));
      Step demold = step(Step.hands(cast, "demold", "Demold " + cast, 30));
      then(mix, demold, DAY, DAY + 8 * HOUR, "the mold lets go after a day");
      spans.add(new Span("mold", 1, mix.key(), demold.key()));
    }
    Step first = steps.get(0);
    Step second = steps.get(2);
    then(first, second, 0, 4 * HOUR, "both from one bag");
    Planner.Outcome outcome =
        CpSatPlanner.alone().plan(problem(), Effort.of(Duration.ofSeconds(5)));
    assertThat(((Impossible) outcome).reasons())
        .containsExactlyInAnyOrder(
            "Trough mold: there are 1",
            "Mix C1, then Demold C1, at least 1 d later, at most 32 h later"
                + " (the mold lets go after a day)",
            "Mix C1, then Mix C2, at most 4 h later (both from one bag)");
  }

  @Test
  void theBestPlanSoFarIsThereWhenTheSearchIsCancelled() {
    PlanProblem studio = Studios.studio(3, 12, 3, 1);
    AtomicInteger plans = new AtomicInteger();
    long from = System.nanoTime();
    Effort effort =
        new Effort(
            Duration.ofSeconds(60),
            1,
            1,
            null,
            plan -> plans.incrementAndGet(),
            () -> plans.get() >= 1);
    Planner.Outcome outcome = CpSatPlanner.alone().plan(studio, effort);
    assertThat((System.nanoTime() - from) * 1e-9).isLessThan(30);
    assertThat(outcome).isInstanceOf(Planned.class);
    assertThat(PlanAudit.of(studio, ((Planned) outcome).plan())).isEmpty();
  }

  private static Effort aSecondAfterTheFirstPlan() {
    AtomicLong until = new AtomicLong(Long.MAX_VALUE);
    return new Effort(
        Duration.ofSeconds(40),
        1,
        1,
        null,
        plan -> until.compareAndSet(Long.MAX_VALUE, System.nanoTime() + 1_000_000_000L),
        () -> System.nanoTime() > until.get());
  }

  @Test
  void twoPeopleNeverDoOneThingTwiceAndEachKeepsTheirHours() {
    for (int seed = 1; seed <= 2; seed++) {
      PlanProblem studio = Studios.studio(seed, 3, 2, 2);
      Effort effort = aSecondAfterTheFirstPlan();
      Planner.Outcome outcome = CpSatPlanner.alone().plan(studio, effort);
      assertThat(outcome).isInstanceOf(Planned.class);
      assertThat(PlanAudit.of(studio, ((Planned) outcome).plan())).isEmpty();
    }
  }

  @Test
  void melterAndMoldsAndNightsAreKeptInInventedStudios() {
    for (int seed = 10; seed <= 13; seed++) {
      PlanProblem studio = Studios.studio(seed, 2 + seed % 4, 2, 1);
      Effort effort = aSecondAfterTheFirstPlan();
      Planner.Outcome outcome = CpSatPlanner.alone().plan(studio, effort);
      assertThat(outcome).as("seed " + seed).isInstanceOf(Planned.class);
      assertThat(PlanAudit.of(studio, ((Planned) outcome).plan())).as("seed " + seed).isEmpty();
    }
  }

  @Test
  void aPlanIsNeverWorseThanTheOneItStartedFrom() {
    PlanProblem studio = Studios.studio(7, 8, 2, 1);
    Effort effort = aSecondAfterTheFirstPlan();
    Planned start = (Planned) CpSatPlanner.alone().plan(studio, effort);
    Planner quick = (problem, e) -> new Planned(start.plan(), 0, false);
    Effort blink = new Effort(Duration.ofMillis(1), 1, 1, null, p -> {}, () -> false);
    Planned after = (Planned) new CpSatPlanner(quick).plan(studio, blink);
    assertThat(after.plan().tardiness(studio)).isLessThanOrEqualTo(start.plan().tardiness(studio));
  }
}

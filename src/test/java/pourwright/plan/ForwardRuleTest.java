package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static pourwright.plan.RandomStudios.ZONE;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.plan.PlanChecker.Finding;
import pourwright.plan.Planner.Effort;

/** The forward rule keeps every rule, and the checker notices every broken one. */
class ForwardRuleTest {
  private static final Effort EFFORT = Effort.of(Duration.ofSeconds(1));

  static Plan planned(PlanProblem problem) {
    Planner.Outcome outcome = new ForwardRule().plan(problem, EFFORT);
    assertThat(outcome).isInstanceOf(Planner.Planned.class);
    return ((Planner.Planned) outcome).plan();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void keepsEveryRuleOfRandomStudios(int block) {
    for (long seed = block * 25L; seed < block * 25L + 25; seed++) {
      PlanProblem problem = RandomStudios.problem(seed);
      assertThat(PlanChecker.check(problem, planned(problem))).as("seed %d", seed).isEmpty();
    }
  }

  @Test
  void isTheSameEveryTime() {
    PlanProblem problem = RandomStudios.problem(7);
    assertThat(planned(problem)).isEqualTo(planned(problem));
  }

  private static PlanProblem of(List<Resource> resources, List<Step> steps, List<Link> links) {
    return of(RandomStudios.MONDAY, resources, steps, links);
  }

  private static PlanProblem of(
      Instant origin, List<Resource> resources, List<Step> steps, List<Link> links) {
    return new PlanProblem(
        origin, ZONE, 20 * 1440, resources, steps, links, List.of(), List.of(), List.of(),
        List.of(), 30);
  }

  private static Resource person(Instant origin) {
    return Resource.person("hands:1", "Mira", WorkHours.house().windows(origin, ZONE, 20 * 1440));
  }

  @Test
  void theClocksGoForwardInsideATwelveHourWait() {
    // the night of 2026-03-29 is an hour short in Berlin: 12 h from 18:00 end at 07:00
    Instant saturday = LocalDate.of(2026, 3, 28).atTime(9, 0).atZone(ZONE).toInstant();
    WorkHours weekend =
        new WorkHours(
            Map.of(
                DayOfWeek.SATURDAY,
                List.of(new WorkHours.Stretch(LocalTime.of(17, 0), LocalTime.of(18, 0))),
                DayOfWeek.SUNDAY,
                List.of(new WorkHours.Stretch(LocalTime.of(6, 0), LocalTime.of(18, 0)))),
            Set.of());
    Resource mira = Resource.person("hands:1", "Mira", weekend.windows(saturday, ZONE, 20 * 1440));
    PlanProblem problem =
        of(
            saturday,
            List.of(mira),
            List.of(
                Step.hands("C1", "coat", "Coat", 60),
                Step.wait("C1", "dry", "Dry", 720),
                Step.hands("C1", "look", "Look", 10)),
            List.of(
                new Link("C1/coat", "C1/dry", 0, 0, "dries at once"),
                new Link("C1/dry", "C1/look", 0, null, "look when dry")));
    Plan plan = planned(problem);
    int look = plan.at("C1/look").startMin();
    assertThat(problem.clock(look).toLocalDateTime().toString()).isEqualTo("2026-03-29T07:00");
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
  }

  @Test
  void aDayOffInTheMiddleOfAMaximumWaitMovesTheEarlierStep() {
    // coat two may come one day after coat one at most; Tuesday is off, so both are on Wednesday
    // or on one day together
    WorkHours hours = WorkHours.house().without(Set.of(LocalDate.of(2026, 3, 17)));
    Resource mira =
        Resource.person("hands:1", "Mira", hours.windows(RandomStudios.MONDAY, ZONE, 20 * 1440));
    PlanProblem problem =
        of(
            List.of(mira),
            List.of(
                Step.hands("C1", "one", "Coat one", 30), Step.hands("C1", "two", "Coat two", 30)),
            List.of(new Link("C1/one", "C1/two", 600, 1000, "recoat within a day")));
    Plan plan = planned(problem);
    assertThat(problem.clock(plan.at("C1/one").startMin()).toLocalDate())
        .isEqualTo(LocalDate.of(2026, 3, 18));
    assertThat(problem.clock(plan.at("C1/two").startMin()).toLocalDate())
        .isEqualTo(LocalDate.of(2026, 3, 19));
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
  }

  @Test
  void whatNoStretchOfWorkHoldsIsNamed() {
    PlanProblem problem =
        of(
            List.of(person(RandomStudios.MONDAY)),
            List.of(Step.watch("T1", "burn", "Burn test", 400)),
            List.of());
    Planner.Outcome outcome = new ForwardRule().plan(problem, EFFORT);
    assertThat(((Planner.Impossible) outcome).reasons().get(0))
        .startsWith("Burn test needs somebody there for 400 minutes in one go");
  }

  @Test
  void aPlanWithABurnOvernightIsRejectedByName() {
    PlanProblem problem =
        of(
            List.of(person(RandomStudios.MONDAY)),
            List.of(Step.watch("T1", "burn", "Burn test", 240)),
            List.of());
    Plan overnight = new Plan(List.of(new Placed("T1/burn", 600, 840, null)));
    assertThat(PlanChecker.check(problem, overnight))
        .extracting(Finding::sentence)
        .first()
        .asString()
        .startsWith("Burn test is hot or lit with nobody there, from 2026-03-16 19:00");
  }

  /** One plan broken in one way, and the rule that must notice. */
  private static List<String> rules(PlanProblem problem, Plan plan) {
    return PlanChecker.check(problem, plan).stream().map(Finding::rule).toList();
  }

  private static Plan moved(Plan plan, String step, int by) {
    List<Placed> places = new ArrayList<>();
    for (Placed p : plan.placed()) {
      places.add(
          p.step().equals(step)
              ? new Placed(p.step(), p.startMin() + by, p.endMin() + by, p.person())
              : p);
    }
    return new Plan(places);
  }

  @Test
  void theCheckerNoticesEachBrokenRule() {
    PlanProblem problem = RandomStudios.problem(3);
    Plan plan = planned(problem);
    Placed cast = plan.at("C1/cast");
    assertThat(rules(problem, new Plan(plan.placed().subList(1, plan.placed().size()))))
        .containsExactly("missing");
    assertThat(rules(problem, moved(plan, "C1/demold", -30))).contains("wait");
    assertThat(rules(problem, moved(plan, "C1/cast", 660))).contains("hours", "wait");
    assertThat(rules(problem, moved(plan, "P1/melt", 720))).contains("hot");
    assertThat(rules(problem, moved(plan, "C1/cast", -RandomStudios.HORIZON))).contains("horizon");
    List<Placed> longer = new ArrayList<>(plan.placed());
    longer.remove(cast);
    longer.add(new Placed("C1/cast", cast.startMin(), cast.endMin() + 1, cast.person()));
    assertThat(rules(problem, new Plan(longer))).contains("length");
    longer.set(longer.size() - 1, new Placed("C1/cast", cast.startMin(), cast.endMin(), null));
    assertThat(rules(problem, new Plan(longer))).contains("hands");
  }

  @Test
  void theCheckerNoticesTwoThingsInOnePairOfHandsAndOneMoldTwice() {
    Resource mira = person(RandomStudios.MONDAY);
    Resource mold = Resource.always("mold:b", "Bollard mold", Resource.Kind.MOLD, 1);
    PlanProblem problem =
        of(
            List.of(mira, mold),
            List.of(
                Step.hands("C1", "cast", "Cast one", 30).using(Map.of("mold:b", 1)),
                Step.hands("C2", "cast", "Cast two", 30).using(Map.of("mold:b", 1))),
            List.of());
    Plan both =
        new Plan(
            List.of(
                new Placed("C1/cast", 0, 30, "hands:1"), new Placed("C2/cast", 29, 59, "hands:1")));
    assertThat(rules(problem, both)).containsExactly("hands", "thing");
  }

  @Test
  void theCheckerNoticesASolventBesideAFlameAndAnUnwashedMelter() {
    Resource mira = person(RandomStudios.MONDAY);
    Resource melter = Resource.always("melter", "Melter", Resource.Kind.EQUIPMENT, 1);
    PlanProblem problem =
        new PlanProblem(
            RandomStudios.MONDAY,
            ZONE,
            1440,
            List.of(mira, melter),
            List.of(
                Step.watch("P1", "melt", "Melt one", 60)
                    .using(Map.of("melter", 1))
                    .marked(Set.of("flame"), "rain"),
                Step.watch("P2", "melt", "Melt two", 60)
                    .using(Map.of("melter", 1))
                    .marked(Set.of(), "fig"),
                Step.hands("C1", "seal", "Seal", 20).marked(Set.of("solvent"), null)),
            List.of(),
            List.of(),
            List.of(),
            List.of(new Apart("solvent", "flame", "a solvent coat near a warm melter")),
            List.of(new Washing("melter", 20)),
            30);
    Plan careless =
        new Plan(
            List.of(
                new Placed("P1/melt", 0, 60, null),
                new Placed("P2/melt", 70, 130, null),
                new Placed("C1/seal", 50, 70, "hands:1")));
    assertThat(rules(problem, careless)).containsExactly("apart", "washing");
    assertThat(PlanChecker.check(problem, planned(problem))).isEmpty();
  }

  @Test
  void whatHasBegunStaysWhereItIs() {
    Resource mira = person(RandomStudios.MONDAY);
    PlanProblem problem =
        of(
            List.of(mira),
            List.of(
                Step.hands("C1", "cast", "Cast", 30).fixedAt(-20),
                Step.wait("C1", "set", "Set", 90),
                Step.hands("C1", "demold", "Demold", 10)),
            List.of(
                new Link("C1/cast", "C1/set", 0, 0, "sets at once"),
                new Link("C1/set", "C1/demold", 0, 600, "demold before it sticks")));
    Plan plan = planned(problem);
    assertThat(plan.at("C1/cast").startMin()).isEqualTo(-20);
    assertThat(plan.at("C1/demold").startMin()).isEqualTo(100);
    assertThat(PlanChecker.check(problem, plan)).isEmpty();
    assertThat(rules(problem, moved(plan, "C1/cast", 5))).contains("moved");
  }
}

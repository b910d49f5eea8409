package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Plain projects: against trying every order of a few steps, and the checker. */
class ProjectListsTest {
  private static PlanProblem project(long seed, int steps) {
    Random random = new Random(seed);
    List<Step> all = new ArrayList<>();
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      Map<String, Integer> uses = Map.of("r", 1 + random.nextInt(3), "s", 1 + random.nextInt(2));
      all.add(Step.wait("B", "" + i, "job " + i, 1 + random.nextInt(6)).using(uses));
      if (i > 1 && random.nextBoolean()) {
        links.add(new Link("B/" + random.nextInt(i), "B/" + i, 0, null, "order of jobs"));
      }
    }
    all.add(Step.wait("B", "end", "end", 0));
    all.subList(0, steps).forEach(s -> links.add(new Link(s.key(), "B/end", 0, null, "the end")));
    return new PlanProblem(
        Instant.EPOCH,
        ZoneOffset.UTC,
        500,
        List.of(
            Resource.always("r", "R", Resource.Kind.EQUIPMENT, 4),
            Resource.always("s", "S", Resource.Kind.EQUIPMENT, 3)),
        all,
        links,
        List.of(),
        List.of(new Goal("g", "makespan", "B/end", 0, 1)),
        List.of(),
        List.of(),
        0);
  }

  /** The least end over all orders, each laid out as early as can be: one of them is the best. */
  private static long leastEnd(PlanProblem problem) {
    return leastEnd(problem, new ArrayList<>(), problem.steps());
  }

  private static long leastEnd(PlanProblem problem, List<Placed> done, List<Step> left) {
    if (left.isEmpty()) {
      return new Plan(done).tardiness(problem);
    }
    long best = Long.MAX_VALUE;
    for (Step step : left) {
      int from = from(problem, done, step);
      if (from >= 0) {
        int at = from;
        while (!fits(problem, done, step, at)) {
          at++;
        }
        List<Placed> more = new ArrayList<>(done);
        more.add(new Placed(step.key(), at, at + step.minutes(), null));
        List<Step> rest = left.stream().filter(s -> !s.equals(step)).toList();
        best = Math.min(best, leastEnd(problem, more, rest));
      }
    }
    return best;
  }

  private static int from(PlanProblem problem, List<Placed> done, Step step) {
    int from = 0;
    for (Link link : problem.links()) {
      if (link.after().equals(step.key())) {
        int end =
            done.stream()
                .filter(p -> p.step().equals(link.before()))
                .mapToInt(Placed::endMin)
                .findFirst()
                .orElse(-1);
        if (end < 0) {
          return -1;
        }
        from = Math.max(from, end);
      }
    }
    return from;
  }

  private static boolean fits(PlanProblem problem, List<Placed> done, Step step, int at) {
    for (Resource thing : problem.resources()) {
      for (int t = at; t < at + step.minutes(); t++) {
        int used = step.uses().getOrDefault(thing.key(), 0);
        for (Placed p : done) {
          boolean runs = p.startMin() <= t && t < p.endMin();
          Step other = problem.stepsByKey().get(p.step());
          used += runs && other != null ? other.uses().getOrDefault(thing.key(), 0) : 0;
        }
        if (used > thing.capacity()) {
          return false;
        }
      }
    }
    return true;
  }

  @Test
  void sixJobsAreLaidAsWellAsTheBestOfAllOrders() {
    for (int seed = 1; seed <= 12; seed++) {
      PlanProblem problem = project(seed, 6);
      Plan plan = ProjectLists.best(problem, 1, 400).orElseThrow();
      assertThat(PlanChecker.check(problem, plan)).as("seed " + seed).isEmpty();
      assertThat(plan.tardiness(problem)).as("seed " + seed).isEqualTo(leastEnd(problem));
    }
  }

  @Test
  void aLargerProjectKeepsEveryRuleAndIsNoWorseWithMoreTries() {
    PlanProblem problem = project(5, 40);
    Plan few = ProjectLists.best(problem, 1, 5).orElseThrow();
    Plan many = ProjectLists.best(problem, 1, 3000).orElseThrow();
    assertThat(PlanChecker.check(problem, many)).isEmpty();
    assertThat(many.tardiness(problem)).isLessThanOrEqualTo(few.tardiness(problem));
  }

  @Test
  void aStudioIsNoPlainProject() {
    assertThat(ProjectLists.best(RandomStudios.problem(1), 1, 10)).isEmpty();
  }
}

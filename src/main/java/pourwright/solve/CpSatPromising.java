package pourwright.solve;

import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.plan.Goal;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner.Effort;
import pourwright.plan.Promise;
import pourwright.plan.Promising;
import pourwright.plan.Resource;
import pourwright.plan.Window;

/**
 * The earliest date that holds, by searching for it with the other promises as rules; and what
 * would make it earlier, by searching again with one more of each thing, and with evenings of work.
 */
public final class CpSatPromising implements Promising {
  /** An evening: so many more minutes after the last window of each day; house. */
  private static final int EVENING_MIN = 180;

  /** Share of the time for the date itself; the rest goes to the questions of what would help. */
  private static final double SHARE = 0.6;

  private record Found(int endMin, long boundMin, Plan plan) {}

  @Override
  public Promise earliest(PlanProblem problem, String goal, Plan standing, Effort effort) {
    long from = System.nanoTime();
    Duration share = Duration.ofNanos((long) (effort.limit().toNanos() * SHARE));
    Found found = search(problem, goal, standing, effort, share, effort.hint());
    if (found == null) {
      return new Promise.None(
          List.of(
              "no date within the time planned for keeps every other promise; plan further ahead or"
                  + " give it more time"));
    }
    Duration left = effort.limit().minusNanos(System.nanoTime() - from);
    return new Promise.Holds(
        found.endMin(),
        found.boundMin(),
        found.plan(),
        gains(problem, goal, standing, effort, found, left));
  }

  private static @Nullable Found search(
      PlanProblem problem,
      String goal,
      Plan standing,
      Effort effort,
      Duration limit,
      @Nullable Plan hint) {
    PlanModel model = new PlanModel(problem);
    if (model.isImpossible()) {
      return null;
    }
    Goal asked = goal(problem, goal);
    keepOthers(model, goal, standing);
    if (hint != null) {
      model.hint(hint);
    }
    int last = model.of(asked.lastStep());
    LinearExprBuilder end =
        LinearExpr.newBuilder().add(model.starts[last]).add(model.minutes(last));
    Search.Result result =
        new Search(effort)
            .minimize(model.model, end, limit, v -> effort.better().accept(model.plan(v)));
    return result.answered()
        ? new Found(Math.toIntExact(result.value()), result.bound(), model.plan(result.values()))
        : null;
  }

  private static Goal goal(PlanProblem problem, String key) {
    return problem.goals().stream()
        .filter(g -> g.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no goal " + key));
  }

  private static void keepOthers(PlanModel model, String asked, Plan standing) {
    Map<String, Placed> places = standing.byStep();
    for (Goal goal : model.problem.goals()) {
      Placed placed = places.get(goal.lastStep());
      if (!goal.key().equals(asked)) {
        long latest = Math.max(goal.dueMin(), placed == null ? 0 : placed.endMin());
        int step = model.of(goal.lastStep());
        model.model.addLessOrEqual(model.starts[step], latest - model.minutes(step));
      }
    }
  }

  private static List<Promise.Gain> gains(
      PlanProblem problem, String goal, Plan standing, Effort effort, Found found, Duration left) {
    List<Remedy> remedies = remedies(problem);
    List<Promise.Gain> gains = new ArrayList<>();
    long deadline = System.nanoTime() + left.toNanos();
    for (int i = 0; i < remedies.size(); i++) {
      long share = (deadline - System.nanoTime()) / (remedies.size() - i);
      if (share <= 0 || effort.cancelled().getAsBoolean()) {
        break;
      }
      Remedy remedy = remedies.get(i);
      Found with =
          search(
              remedy.problem(),
              goal,
              standing,
              quietly(effort),
              Duration.ofNanos(share),
              found.plan());
      if (with != null && with.endMin() < found.endMin()) {
        gains.add(new Promise.Gain(remedy.limit(), remedy.words(), found.endMin() - with.endMin()));
      }
    }
    gains.sort(Comparator.comparingInt(Promise.Gain::minutesEarlier).reversed());
    return gains;
  }

  private static Effort quietly(Effort effort) {
    return new Effort(
        effort.limit(), effort.seed(), effort.workers(), null, plan -> {}, effort.cancelled());
  }

  private record Remedy(String limit, String words, PlanProblem problem) {}

  private static List<Remedy> remedies(PlanProblem problem) {
    List<Remedy> remedies = new ArrayList<>();
    List<Resource> all = problem.resources();
    for (int i = 0; i < all.size(); i++) {
      Resource it = all.get(i);
      boolean person = it.kind() == Resource.Kind.PERSON;
      Resource more = person ? withEvenings(problem, it) : oneMore(it);
      List<Resource> changed = new ArrayList<>(all);
      changed.set(i, more);
      remedies.add(
          new Remedy(
              person ? "the hours of " + it.words() : it.words(),
              person ? "evenings of work by " + it.words() : "one more " + it.words(),
              with(problem, changed)));
    }
    return remedies;
  }

  private static Resource oneMore(Resource it) {
    return new Resource(it.key(), it.words(), it.kind(), it.capacity() + 1, it.windows());
  }

  private static Resource withEvenings(PlanProblem problem, Resource it) {
    List<Window> hours = new ArrayList<>(it.windows());
    for (int i = 0; i < it.windows().size(); i++) {
      int end = it.windows().get(i).toMin();
      boolean lastOfDay =
          i + 1 == it.windows().size()
              || !problem
                  .clock(it.windows().get(i + 1).fromMin())
                  .toLocalDate()
                  .equals(problem.clock(end).toLocalDate());
      if (lastOfDay) {
        hours.add(new Window(end, end + EVENING_MIN));
      }
    }
    return new Resource(it.key(), it.words(), it.kind(), it.capacity(), hours);
  }

  private static PlanProblem with(PlanProblem problem, List<Resource> resources) {
    return new PlanProblem(
        problem.origin(),
        problem.zone(),
        problem.horizonMin(),
        resources,
        problem.steps(),
        problem.links(),
        problem.spans(),
        problem.goals(),
        problem.apart(),
        problem.washings(),
        problem.lastHotStartMin());
  }
}

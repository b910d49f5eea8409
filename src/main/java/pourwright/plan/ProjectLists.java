package pourwright.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * A good order for a plain project: steps that wait for each other and share things with a count,
 * one end to bring forward, and nothing else (no hours, no longest waits, no things held over
 * several steps). Lists of steps are laid out one by one, pushed right and left again, crossed and
 * bred. The first plan for the solver; it proves nothing.
 *
 * <p>Source: serial schedule generation and latest-finish sampling: R. Kolisch, European Journal of
 * Operational Research 90 (1996) 320-333; crossing of lists: S. Hartmann, Naval Research Logistics
 * 45 (1998) 733-750; pushing right and left (double justification): V. Valls, F. Ballestín, S.
 * Quintanilla, European Journal of Operational Research 165 (2005) 375-386. The same seed gives the
 * same plan.
 */
public final class ProjectLists {
  private static final int PARENTS = 40;
  private static final int FAMILY = 1200;
  private static final int FAMILY_OF_ELDERS = 3;
  private static final double SWAP = 0.05;

  private final PlanProblem problem;
  private final int steps;
  private final int[] minutes;
  private final int[][] before;
  private final int[][] after;
  private final int[][] uses;
  private final int[] capacity;
  private final int horizon;
  private final Random random;
  private final int[] topological;

  private record Laid(int[] starts, int end) {}

  private ProjectLists(PlanProblem problem, long seed) {
    this.problem = problem;
    this.steps = problem.steps().size();
    this.random = new Random(seed);
    minutes = problem.steps().stream().mapToInt(Step::minutes).toArray();
    horizon = Arrays.stream(minutes).sum() + 1;
    Map<String, Integer> index = new HashMap<>();
    problem.steps().forEach(s -> index.put(s.key(), index.size()));
    List<List<Integer>> in = new ArrayList<>();
    List<List<Integer>> out = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      in.add(new ArrayList<>());
      out.add(new ArrayList<>());
    }
    for (Link link : problem.links()) {
      int from = index.getOrDefault(link.before(), 0);
      int to = index.getOrDefault(link.after(), 0);
      in.get(to).add(from);
      out.get(from).add(to);
    }
    before = in.stream().map(ProjectLists::array).toArray(int[][]::new);
    after = out.stream().map(ProjectLists::array).toArray(int[][]::new);
    List<Resource> things = problem.resources();
    capacity = things.stream().mapToInt(Resource::capacity).toArray();
    uses = new int[steps][things.size()];
    for (int i = 0; i < steps; i++) {
      for (int r = 0; r < things.size(); r++) {
        uses[i][r] = problem.steps().get(i).uses().getOrDefault(things.get(r).key(), 0);
      }
    }
    topological = inOrder();
  }

  private static int[] array(List<Integer> list) {
    return list.stream().mapToInt(Integer::intValue).toArray();
  }

  /**
   * The best plan of so many tries; empty when the problem is not a plain project.
   *
   * @param seed for what is tried at random
   * @param tries lists that are laid out, each of them three times
   */
  public static Optional<Plan> best(PlanProblem problem, long seed, int tries) {
    if (!PlainProject.is(problem)) {
      return Optional.empty();
    }
    ProjectLists lists = new ProjectLists(problem, seed);
    return lists.topological.length < lists.steps
        ? Optional.empty()
        : Optional.of(lists.plan(lists.breed(tries)));
  }

  private int[] inOrder() {
    int[] open = new int[steps];
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      open[i] = before[i].length;
      if (open[i] == 0) {
        order.add(i);
      }
    }
    for (int at = 0; at < order.size(); at++) {
      for (int next : after[order.get(at)]) {
        if (--open[next] == 0) {
          order.add(next);
        }
      }
    }
    return array(order);
  }

  /** Families bred apart, so that they do not all end at the same list; then the best of each. */
  private Laid breed(int tries) {
    int[] latest = latestEnds();
    List<Laid> elders = new ArrayList<>();
    int families = Math.max(1, tries / FAMILY - FAMILY_OF_ELDERS);
    int floor = leastEnd(latest);
    for (int family = 0; family < families; family++) {
      List<Laid> parents = new ArrayList<>();
      for (int t = 0; t < Math.min(FAMILY, tries); t++) {
        boolean first = parents.size() < PARENTS;
        int[] list = first ? sampled(latest, t + family == 0) : child(parents);
        Laid laid = justified(list);
        if (laid.end() <= floor) {
          return laid;
        }
        keep(parents, laid);
      }
      parents.sort(Comparator.comparingInt(Laid::end));
      elders.addAll(parents.subList(0, Math.min(parents.size(), 1 + PARENTS / families)));
    }
    for (int t = families * FAMILY; t < tries; t++) {
      keep(elders, justified(child(elders)));
    }
    return elders.stream().min(Comparator.comparingInt(Laid::end)).orElseThrow();
  }

  private void keep(List<Laid> parents, Laid laid) {
    if (parents.size() < PARENTS) {
      parents.add(laid);
      return;
    }
    // the child takes the place of the worse of two drawn at random
    int one = random.nextInt(parents.size());
    int other = random.nextInt(parents.size());
    int worse = parents.get(one).end() >= parents.get(other).end() ? one : other;
    if (laid.end() <= parents.get(worse).end()
        && parents.stream().noneMatch(p -> Arrays.equals(p.starts(), laid.starts()))) {
      parents.set(worse, laid);
    }
  }

  /** No order ends sooner: the longest chain of waits, and the work that each thing has to bear. */
  private int leastEnd(int[] latest) {
    int least = 0;
    for (int i = 0; i < steps; i++) {
      least = Math.max(least, horizon - latest[i] + minutes[i]);
    }
    for (int r = 0; r < capacity.length; r++) {
      long work = 0;
      for (int i = 0; i < steps; i++) {
        work += (long) uses[i][r] * minutes[i];
      }
      if (capacity[r] > 0) {
        least = (int) Math.max(least, (work + capacity[r] - 1) / capacity[r]);
      }
    }
    return least;
  }

  private int[] latestEnds() {
    int[] latest = new int[steps];
    Arrays.fill(latest, horizon);
    for (int at = steps - 1; at >= 0; at--) {
      int step = topological[at];
      for (int next : after[step]) {
        latest[step] = Math.min(latest[step], latest[next] - minutes[next]);
      }
    }
    return latest;
  }

  /** A list that keeps the links: the least latest end first, or drawn with that as regret. */
  private int[] sampled(int[] latest, boolean greedy) {
    int[] open = new int[steps];
    List<Integer> ready = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      open[i] = before[i].length;
      if (open[i] == 0) {
        ready.add(i);
      }
    }
    int[] list = new int[steps];
    for (int at = 0; at < steps; at++) {
      int step = greedy ? least(ready, latest) : drawn(ready, latest);
      ready.remove((Integer) step);
      list[at] = step;
      for (int next : after[step]) {
        if (--open[next] == 0) {
          ready.add(next);
        }
      }
    }
    return list;
  }

  private static int least(List<Integer> ready, int[] latest) {
    int best = ready.get(0);
    for (int step : ready) {
      best = latest[step] < latest[best] ? step : best;
    }
    return best;
  }

  private int drawn(List<Integer> ready, int[] latest) {
    int worst = ready.stream().mapToInt(s -> latest[s]).max().orElse(0);
    double sum = ready.stream().mapToDouble(s -> worst - latest[s] + 1.0).sum();
    double at = random.nextDouble() * sum;
    for (int step : ready) {
      at -= worst - latest[step] + 1.0;
      if (at <= 0) {
        return step;
      }
    }
    return ready.get(ready.size() - 1);
  }

  /**
   * A piece of one parent's list in the middle of another's, with neighbours changed here and
   * there.
   */
  private int[] child(List<Laid> parents) {
    int[] one = byStart(parents.get(fitter(parents)).starts());
    int[] other = byStart(parents.get(fitter(parents)).starts());
    int from = random.nextInt(steps);
    int to = from + random.nextInt(steps - from) + 1;
    boolean[] taken = new boolean[steps];
    int[] list = new int[steps];
    int at = 0;
    for (; at < from; at++) {
      list[at] = one[at];
      taken[one[at]] = true;
    }
    for (int step : other) {
      if (at < to && !taken[step]) {
        list[at++] = step;
        taken[step] = true;
      }
    }
    for (int step : one) {
      if (!taken[step]) {
        list[at++] = step;
      }
    }
    for (int i = 0; i + 1 < steps; i++) {
      if (random.nextDouble() < SWAP && !waitsFor(list[i + 1], list[i])) {
        int left = list[i];
        list[i] = list[i + 1];
        list[i + 1] = left;
      }
    }
    return list;
  }

  private boolean waitsFor(int step, int other) {
    for (int earlier : before[step]) {
      if (earlier == other) {
        return true;
      }
    }
    return false;
  }

  private int fitter(List<Laid> parents) {
    int one = random.nextInt(parents.size());
    int other = random.nextInt(parents.size());
    return parents.get(one).end() <= parents.get(other).end() ? one : other;
  }

  /** Steps by start; those that begin together in an order that keeps the links. */
  private int[] byStart(int[] starts) {
    return Arrays.stream(topological)
        .boxed()
        .sorted((a, b) -> Integer.compare(starts[a], starts[b]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private Laid justified(int[] list) {
    int[] left = lay(list, before);
    int end = end(left);
    int[] ends = new int[steps];
    for (int i = 0; i < steps; i++) {
      ends[i] = end - left[i] - minutes[i];
    }
    // seen from the end, time runs backwards: laid by latest end, then mirrored
    int[] right = lay(mirrored(ends), after);
    int[] starts = new int[steps];
    int all = end(right);
    for (int i = 0; i < steps; i++) {
      starts[i] = all - right[i] - minutes[i];
    }
    int[] again = lay(byStart(starts), before);
    return end(again) <= end ? new Laid(again, end(again)) : new Laid(left, end);
  }

  private int[] mirrored(int[] starts) {
    int[] backwards = new int[steps];
    for (int i = 0; i < steps; i++) {
      backwards[i] = topological[steps - 1 - i];
    }
    return Arrays.stream(backwards)
        .boxed()
        .sorted((a, b) -> Integer.compare(starts[a], starts[b]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private int end(int[] starts) {
    int end = 0;
    for (int i = 0; i < steps; i++) {
      end = Math.max(end, starts[i] + minutes[i]);
    }
    return end;
  }

  /** Lays the steps out one by one, each as early as links and things allow. */
  private int[] lay(int[] list, int[][] earlier) {
    int[][] taken = new int[capacity.length][horizon];
    int[] starts = new int[steps];
    for (int step : list) {
      int at = 0;
      for (int other : earlier[step]) {
        at = Math.max(at, starts[other] + minutes[other]);
      }
      at = fits(step, at, taken);
      starts[step] = at;
      for (int r = 0; r < capacity.length; r++) {
        for (int t = at; uses[step][r] > 0 && t < at + minutes[step]; t++) {
          taken[r][t] += uses[step][r];
        }
      }
    }
    return starts;
  }

  private int fits(int step, int from, int[][] taken) {
    int at = from;
    for (int t = at; t < at + minutes[step]; t++) {
      for (int r = 0; r < capacity.length; r++) {
        if (taken[r][t] + uses[step][r] > capacity[r]) {
          at = t + 1;
          break;
        }
      }
    }
    return at;
  }

  private Plan plan(Laid laid) {
    List<Placed> placed = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      int start = laid.starts()[i];
      placed.add(new Placed(problem.steps().get(i).key(), start, start + minutes[i], null));
    }
    return new Plan(placed);
  }
}

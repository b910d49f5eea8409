package pourwright.main;

import java.io.PrintStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import pourwright.cli.RefusedInput;
import pourwright.plan.DayCount;
import pourwright.plan.ForwardRule;
import pourwright.plan.Plan;
import pourwright.plan.PlanChecker;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;
import pourwright.plan.TouchCount;

/**
 * {@code bench studios [--count 50] [--lines 40] [--seconds 10] [--workers 2] [--from 1]
 * [--due-from 42]}: plans invented studios and prints, for each, the minutes late by the forward
 * rule, by the planner and by its bound, the days' aim, and when the first plan was there; then
 * what the planner gained.
 */
final class StudiosBench {
  private static final String USAGE =
      "bench studios [--count 50] [--lines 40] [--seconds 10] [--workers 2] [--from 1] [--due-from 42]";
  private static final long NEAR_MIN = 30;
  private static final double NEAR_SHARE = 0.05;

  private final Planner planner;
  private final PrintStream out;

  StudiosBench(Planner planner, PrintStream out) {
    this.planner = planner;
    this.out = out;
  }

  /** One studio, planned. */
  private record Row(
      long forwardMin,
      long minutesLate,
      long boundMin,
      DayCount forwardDays,
      DayCount days,
      long forwardTouches,
      long touches,
      long touchesBound,
      double firstSeconds,
      int faults) {
    boolean near() {
      return minutesLate - boundMin <= NEAR_MIN;
    }

    boolean touchesNear() {
      return touches - touchesBound <= NEAR_SHARE * touchesBound;
    }
  }

  /**
   * Runs with the words after {@code studios}; 0 when every plan keeps the rules and none is worse.
   */
  int run(List<String> words) {
    List<String> rest = new ArrayList<>(words);
    int count = option(rest, "--count", 50);
    int lines = option(rest, "--lines", 40);
    int seconds = option(rest, "--seconds", 10);
    int workers = option(rest, "--workers", 2);
    int from = option(rest, "--from", 1);
    int soonest = option(rest, "--due-from", 42);
    if (!rest.isEmpty() || count < 1 || lines < 1 || seconds < 1 || workers < 1) {
      throw new RefusedInput("'" + String.join(" ", words) + "' is not understood", "", USAGE);
    }
    out.printf(
        Locale.ROOT,
        "%6s %6s %10s %10s %10s %6s %6s %10s %10s %8s%n",
        "studio",
        "steps",
        "rule min",
        "plan min",
        "bound",
        "days",
        "was",
        "touches",
        "bound",
        "first s");
    List<Row> rows = new ArrayList<>();
    for (int seed = from; seed < from + count; seed++) {
      rows.add(
          one(
              PlanStudios.problem(seed, lines, soonest),
              seed,
              Duration.ofSeconds(seconds),
              workers));
    }
    return sum(rows);
  }

  private static int option(List<String> words, String name, int absent) {
    int at = words.indexOf(name);
    if (at < 0 || at + 1 >= words.size()) {
      return absent;
    }
    words.remove(at);
    try {
      return Integer.parseInt(words.remove(at));
    } catch (NumberFormatException e) {
      throw new RefusedInput(name + " must be a whole number", "", USAGE);
    }
  }

  private Row one(PlanProblem problem, int seed, Duration limit, int workers) {
    Planner.Outcome rule = new ForwardRule().plan(problem, Planner.Effort.of(limit));
    long from = System.nanoTime();
    AtomicLong first = new AtomicLong();
    Planner.Effort effort =
        new Planner.Effort(
            limit,
            1,
            workers,
            null,
            plan -> first.compareAndSet(0, System.nanoTime() - from),
            () -> false);
    Planner.Outcome outcome = planner.plan(problem, effort);
    if (!(rule instanceof Planner.Planned forward) || !(outcome instanceof Planner.Planned made)) {
      throw new IllegalStateException("studio " + seed + " has no plan");
    }
    Plan plan = made.plan();
    Row row =
        new Row(
            forward.plan().tardiness(problem),
            plan.tardiness(problem),
            made.boundMin(),
            DayCount.of(problem, forward.plan()),
            DayCount.of(problem, plan),
            TouchCount.of(problem, forward.plan()).sum(),
            TouchCount.of(problem, plan).sum(),
            made.aims().size() > 1 ? made.aims().get(1).bound() : 0,
            first.get() * 1e-9,
            PlanChecker.check(problem, plan).size());
    out.printf(
        Locale.ROOT,
        "%6d %6d %10d %10d %10d %6d %6d %10d %10d %8.2f%s%n",
        seed,
        problem.steps().size(),
        row.forwardMin(),
        row.minutesLate(),
        row.boundMin(),
        row.days().days(),
        row.forwardDays().days(),
        row.touches(),
        row.touchesBound(),
        row.firstSeconds(),
        row.faults() == 0 ? "" : "  BREAKS " + row.faults() + " RULES");
    out.flush();
    return row;
  }

  private int sum(List<Row> rows) {
    long worse = rows.stream().filter(r -> r.minutesLate() > r.forwardMin()).count();
    long faults = rows.stream().filter(r -> r.faults() > 0).count();
    long proven = rows.stream().filter(r -> r.minutesLate() <= r.boundMin()).count();
    long near = rows.stream().filter(Row::near).count();
    long touchesNear = rows.stream().filter(Row::touchesNear).count();
    out.printf(
        Locale.ROOT,
        "%d studios: %d later than the rule, %d break a rule, first aim %d proven and %d within %d"
            + " min, second aim %d within %.0f %%%n",
        rows.size(),
        worse,
        faults,
        proven,
        near,
        NEAR_MIN,
        touchesNear,
        100 * NEAR_SHARE);
    out.printf(
        Locale.ROOT,
        "mean: late %.0f min by the rule, %.0f planned; days with work %.1f by the rule, %.1f"
            + " planned; first plan after %.2f s, at most %.2f s%n",
        rows.stream().mapToLong(Row::forwardMin).average().orElse(0),
        rows.stream().mapToLong(Row::minutesLate).average().orElse(0),
        rows.stream().mapToInt(r -> r.forwardDays().days()).average().orElse(0),
        rows.stream().mapToInt(r -> r.days().days()).average().orElse(0),
        rows.stream().mapToDouble(Row::firstSeconds).average().orElse(0),
        rows.stream().mapToDouble(Row::firstSeconds).max().orElse(0));
    out.flush();
    return worse + faults == 0 ? 0 : 1;
  }
}

package pourwright.plan;

import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;

/**
 * How much coming and staying a plan asks for: for each calendar day on which somebody is needed,
 * the minutes from the first attended step to the end of the last, and an hour for the day itself.
 * The hour is a house value: it makes one longer day better than two short ones.
 *
 * @param days days on which somebody is needed
 * @param minutes minutes from first to last attended step, over all days
 */
public record DayCount(int days, long minutes) {
  /** What a day that is begun counts beside its length; house. */
  public static final int MINUTES_FOR_A_DAY = 60;

  /** True when a person has to be there: hands, watch, and whatever is hot or lit. */
  public static boolean attended(Step step) {
    return step.kind() != StepKind.WAIT || step.hot();
  }

  /** Counts a plan; steps begun before the origin are history and do not count. */
  public static DayCount of(PlanProblem problem, Plan plan) {
    Map<String, Step> steps = problem.stepsByKey();
    Map<LocalDate, int[]> days = new TreeMap<>();
    for (Placed placed : plan.placed()) {
      Step step = steps.get(placed.step());
      if (step != null && attended(step) && placed.startMin() >= 0) {
        int[] day =
            days.computeIfAbsent(
                problem.clock(placed.startMin()).toLocalDate(),
                date -> new int[] {Integer.MAX_VALUE, Integer.MIN_VALUE});
        day[0] = Math.min(day[0], placed.startMin());
        day[1] = Math.max(day[1], placed.endMin());
      }
    }
    long minutes = days.values().stream().mapToLong(day -> day[1] - day[0]).sum();
    return new DayCount(days.size(), minutes);
  }

  /** The one number that is kept small, minutes. */
  public long sum() {
    return minutes + (long) days * MINUTES_FOR_A_DAY;
  }
}

package pourwright.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * How often work is taken up, and how much of it makes a day long. A touch is a batch in hand on a
 * day: whatever is done to it that day counts once, so two coats on one day are one touch and a
 * wicking that is left for another day than its pour is one more. A day is long when work goes on
 * past its seventh hour.
 *
 * @param touches batches in hand, day by day
 * @param lateMin minutes of the attended steps that end after the seventh hour of their day
 */
public record TouchCount(int touches, long lateMin) {
  /** What a touch counts beside the work: gloves, laying out, putting away, minutes; house. */
  public static final int MINUTES_FOR_A_TOUCH = 15;

  /** From the opening of the studio on, minutes that a day has before it is a long one; house. */
  public static final int NORMAL_DAY_MIN = 420;

  private record Touch(String batch, LocalDate day) {}

  /** Counts a plan; steps begun before the origin are history and do not count. */
  public static TouchCount of(PlanProblem problem, Plan plan) {
    Map<String, Step> steps = problem.stepsByKey();
    Map<LocalDate, Integer> openings = openings(problem);
    Set<Touch> touches = new HashSet<>();
    long late = 0;
    for (Placed placed : plan.placed()) {
      Step step = steps.get(placed.step());
      if (step != null && DayCount.attended(step) && placed.startMin() >= 0) {
        LocalDate day = problem.clock(placed.startMin()).toLocalDate();
        touches.add(new Touch(step.batch(), day));
        int normal = openings.getOrDefault(day, placed.startMin()) + NORMAL_DAY_MIN;
        late += placed.endMin() > normal ? step.minutes() : 0;
      }
    }
    return new TouchCount(touches.size(), late);
  }

  /** The minute at which somebody is there first, for each day. */
  public static Map<LocalDate, Integer> openings(PlanProblem problem) {
    Map<LocalDate, Integer> openings = new HashMap<>();
    for (Window window : problem.presence()) {
      LocalDate day = problem.clock(window.fromMin()).toLocalDate();
      openings.merge(day, window.fromMin(), Math::min);
    }
    return openings;
  }

  /** What so many touches count, minutes. */
  static long minutesFor(int touches) {
    return (long) touches * MINUTES_FOR_A_TOUCH;
  }

  /** The one number that is kept small, minutes. */
  public long sum() {
    return lateMin + minutesFor(touches);
  }
}

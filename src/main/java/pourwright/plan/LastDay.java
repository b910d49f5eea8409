package pourwright.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.card.CardBook;
import pourwright.order.OrderLine;

/** How long one order takes from the first scoop to the parcel, and the last day to begin it. */
public final class LastDay {
  private static final int LOOK_BACK_DAYS = 180;
  private static final int DAY_MIN = 24 * 60;
  private static final int NO_PLACE_DAYS = 14;

  private LastDay() {}

  /**
   * One leg of the way.
   *
   * @param words what is done or waited for
   * @param minutes how long
   */
  public record Leg(String words, int minutes) {}

  /** The whole way of a line on an empty floor, step by step, and its sum in minutes. */
  public static List<Leg> way(OrderLine line, CardBook book, Habits habits, Floor floor) {
    PlanProblem problem = alone(line, book, habits, floor);
    String cast = problem.steps().get(0).batch();
    String pour = problem.steps().get(problem.steps().size() - 1).batch();
    List<Leg> legs = new ArrayList<>();
    for (Step step : problem.steps()) {
      if (step.batch().equals(cast) || step.batch().equals(pour)) {
        legs.add(new Leg(step.words(), step.minutes()));
      }
    }
    return legs;
  }

  private static PlanProblem alone(OrderLine line, CardBook book, Habits habits, Floor floor) {
    LocalDate day = LocalDate.ofInstant(floor.origin(), floor.zone());
    MakePlan make = Explosion.of(List.of(line), book, InHand.nothing(day), habits);
    return Routing.of(make, book, habits, floor);
  }

  /**
   * The last day to cast so that the line can leave on its day, on a floor with nothing else to do;
   * empty when no day in the last half year would do.
   *
   * @param line with a due day
   */
  public static Optional<LocalDate> toCast(
      OrderLine line, CardBook book, Habits habits, Floor floor) {
    LocalDate due = line.dueOn();
    if (due == null) {
      return Optional.empty();
    }
    int sum = way(line, book, habits, floor).stream().mapToInt(Leg::minutes).sum();
    LocalDate first = due.minusDays(Duration.ofMinutes(sum).toDays());
    LocalDate late = first.plusDays(1); // the waits alone take too long from here
    LocalDate day = first;
    From from = from(day, line, book, habits, floor);
    while (from.lateDays() > 0) {
      late = day;
      day = day.minusDays(from.lateDays());
      if (day.isBefore(first.minusDays(LOOK_BACK_DAYS))) {
        return Optional.empty();
      }
      from = from(day, line, book, habits, floor);
    }
    while (day.plusDays(1).isBefore(late)) {
      LocalDate between = day.plusDays(ChronoUnit.DAYS.between(day, late) / 2);
      From there = from(between, line, book, habits, floor);
      if (there.lateDays() > 0) {
        late = between;
      } else {
        day = between;
        from = there;
      }
    }
    return Optional.of(from.begins());
  }

  /**
   * The line planned from a morning on.
   *
   * @param begins the day of its first step
   * @param lateDays days begun that it is late; 0 when in time
   */
  private record From(LocalDate begins, int lateDays) {}

  /** Made later, it is never ready earlier; so the days that hold lie before those that do not. */
  private static From from(
      LocalDate day, OrderLine line, CardBook book, Habits habits, Floor floor) {
    Instant morning = day.atStartOfDay(floor.zone()).toInstant();
    Floor then = floor.from(morning, LOOK_BACK_DAYS + 20);
    PlanProblem problem = alone(line, book, habits, then);
    if (new ForwardRule().plan(problem, Planner.Effort.of(Duration.ZERO))
        instanceof Planner.Planned planned) {
      LocalDate begins = problem.clock(planned.plan().placed().get(0).startMin()).toLocalDate();
      return new From(begins, lateDays(problem, planned.plan()));
    }
    return new From(day, NO_PLACE_DAYS); // an earlier morning may have one
  }

  private static int lateDays(PlanProblem problem, Plan plan) {
    Map<String, Placed> places = plan.byStep();
    int late = 0;
    for (Goal goal : problem.goals()) {
      Placed last = places.get(goal.lastStep());
      int end = last == null ? problem.horizonMin() : last.endMin();
      late = Math.max(late, end - goal.dueMin());
    }
    return (late + DAY_MIN - 1) / DAY_MIN;
  }
}

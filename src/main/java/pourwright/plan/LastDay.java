package pourwright.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.card.CardBook;
import pourwright.order.OrderLine;

/** How long one order takes from the first scoop to the parcel, and the last day to begin it. */
public final class LastDay {
  private static final int LOOK_BACK_DAYS = 180;

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
    LocalDate day = due.minusDays(Duration.ofMinutes(sum).toDays());
    for (int back = 0; back < LOOK_BACK_DAYS; back++, day = day.minusDays(1)) {
      Instant morning = day.atStartOfDay(floor.zone()).toInstant();
      Floor then =
          new Floor(
              morning,
              floor.zone(),
              200,
              floor.hours(),
              floor.melters(),
              floor.racks(),
              floor.post());
      PlanProblem problem = alone(line, book, habits, then);
      if (new ForwardRule().plan(problem, Planner.Effort.of(Duration.ZERO))
              instanceof Planner.Planned planned
          && planned.plan().tardiness(problem) == 0
          && begins(problem, planned.plan(), day)) {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }

  private static boolean begins(PlanProblem problem, Plan plan, LocalDate day) {
    return problem.clock(plan.placed().get(0).startMin()).toLocalDate().equals(day);
  }
}

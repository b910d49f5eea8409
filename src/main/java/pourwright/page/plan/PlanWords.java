package pourwright.page.plan;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pourwright.page.Desk;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;
import pourwright.plan.Rearrange;
import pourwright.plan.Step;
import pourwright.plan.StepKind;

/** Plans as finished strings. */
final class PlanWords {
  private static final int DAYS_LISTED = 14;

  private final Locale locale;

  PlanWords(Desk desk) {
    this.locale = desk.locale();
  }

  /** What needs somebody, day by day, from a minute on. */
  List<PlanPage.Day> days(PlanProblem problem, Plan plan, int fromMin) {
    Map<String, Step> steps = problem.stepsByKey();
    Map<String, List<PlanPage.Row>> days = new LinkedHashMap<>();
    for (Placed placed : plan.placed()) {
      Step step = steps.get(placed.step());
      if (step != null
          && step.kind() != StepKind.WAIT
          && placed.endMin() > fromMin
          && placed.startMin() < fromMin + DAYS_LISTED * 1440) {
        days.computeIfAbsent(day(problem, placed.startMin()), d -> new ArrayList<>())
            .add(row(problem, placed, step));
      }
    }
    List<PlanPage.Day> list = new ArrayList<>();
    days.forEach((day, rows) -> list.add(new PlanPage.Day(day, rows)));
    return list;
  }

  private PlanPage.Row row(PlanProblem problem, Placed placed, Step step) {
    String who =
        problem.people().stream()
            .filter(p -> p.key().equals(placed.person()))
            .map(p -> p.words())
            .findFirst()
            .orElse(step.kind().words());
    String time = time(problem, placed.startMin()) + " to " + time(problem, placed.endMin());
    return new PlanPage.Row(step.key(), time, step.words(), who);
  }

  private String day(PlanProblem problem, int minute) {
    return DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL)
        .withLocale(locale)
        .format(problem.clock(minute));
  }

  private String time(PlanProblem problem, int minute) {
    return DateTimeFormatter.ofPattern("HH:mm", locale).format(problem.clock(minute));
  }

  private String moment(PlanProblem problem, int minute) {
    return DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", locale).format(problem.clock(minute));
  }

  /** What would stand elsewhere. */
  List<AgainPage.Moved> moved(PlanProblem problem, List<Rearrange.Change> changes) {
    return changes.stream()
        .map(
            c ->
                new AgainPage.Moved(
                    c.words(),
                    c.fromMin() < 0 ? "not planned before" : moment(problem, c.fromMin()),
                    c.toMin() < 0 ? "no longer planned" : moment(problem, c.toMin()),
                    by(c.later())))
        .toList();
  }

  private static String by(int later) {
    if (later == 0) {
      return "";
    }
    return length(Math.abs(later)) + (later > 0 ? " later" : " earlier");
  }

  /** So many minutes as days, hours and minutes. */
  static String length(long minutes) {
    String days = minutes >= 1440 ? minutes / 1440 + " d " : "";
    return days + minutes % 1440 / 60 + " h " + minutes % 60 + " min";
  }

  /** Each aim with what it reached and how much better it could be at most. */
  static List<String> aims(Planner.Planned planned) {
    return planned.aims().stream()
        .map(
            aim ->
                aim.words()
                    + ": "
                    + aim.value()
                    + (aim.proven()
                        ? ", proven: less cannot be"
                        : ", proven not below " + Math.max(0, aim.bound())))
        .toList();
  }
}

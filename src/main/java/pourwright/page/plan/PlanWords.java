package pourwright.page.plan;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
  private static final int BREATH_MIN = 10;

  private final Locale locale;

  PlanWords(Locale locale) {
    this.locale = locale;
  }

  /** What needs somebody, day by day, from a minute on. */
  List<PlanPage.Day> days(PlanProblem problem, Plan plan, int fromMin) {
    Map<String, Step> steps = problem.stepsByKey();
    Map<String, List<Run>> days = new LinkedHashMap<>();
    for (Placed placed : plan.placed()) {
      Step step = steps.get(placed.step());
      if (step != null
          && step.kind() != StepKind.WAIT
          && placed.endMin() > fromMin
          && placed.startMin() < fromMin + DAYS_LISTED * 1440) {
        add(
            days.computeIfAbsent(day(problem, placed.startMin()), d -> new ArrayList<>()),
            new Run(step.words(), who(problem, placed, step), List.of(placed)));
      }
    }
    List<PlanPage.Day> list = new ArrayList<>();
    days.forEach(
        (day, runs) ->
            list.add(new PlanPage.Day(day, runs.stream().map(r -> row(problem, r)).toList())));
    return list;
  }

  /** The same thing done over and over by the same hands, a breath between. */
  private record Run(String words, String who, List<Placed> steps) {
    boolean goesOnWith(Run next) {
      int gap = next.steps().get(0).startMin() - endMin();
      return words.equals(next.words()) && who.equals(next.who()) && gap >= 0 && gap <= BREATH_MIN;
    }

    Run and(Run next) {
      List<Placed> all = new ArrayList<>(steps);
      all.addAll(next.steps());
      return new Run(words, who, all);
    }

    int endMin() {
      return steps.get(steps.size() - 1).endMin();
    }
  }

  private static void add(List<Run> runs, Run next) {
    int last = runs.size() - 1;
    if (last >= 0 && runs.get(last).goesOnWith(next)) {
      runs.set(last, runs.get(last).and(next));
    } else {
      runs.add(next);
    }
  }

  private static String who(PlanProblem problem, Placed placed, Step step) {
    return problem.people().stream()
        .filter(p -> p.key().equals(placed.person()))
        .map(p -> p.words())
        .findFirst()
        .orElse(step.kind().words());
  }

  private PlanPage.Row row(PlanProblem problem, Run run) {
    List<PlanPage.Once> each =
        run.steps().stream()
            .map(s -> new PlanPage.Once(s.step(), times(problem, s.startMin(), s.endMin())))
            .toList();
    String time = times(problem, run.steps().get(0).startMin(), run.endMin());
    return new PlanPage.Row(time, run.words(), run.who(), each);
  }

  private String times(PlanProblem problem, int fromMin, int toMin) {
    return time(problem, fromMin) + " to " + time(problem, toMin);
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

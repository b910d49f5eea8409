package pourwright.page.plan;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Resource;
import pourwright.plan.Span;
import pourwright.plan.Step;
import pourwright.plan.StepKind;
import pourwright.plan.Window;

/**
 * A stretch of a plan drawn to scale as SVG: a row for each person, for what is watched, and for
 * each kind of thing that is held. Works on paper: nothing depends on colour alone.
 */
final class TimeLine {
  private static final int LEFT = 150;
  private static final int WIDTH = 1000;
  private static final int ROW = 34;
  private static final int BAR = 22;
  private static final int HEAD = 30;
  private static final double LETTER = 7.2;

  private final PlanProblem problem;
  private final Plan plan;
  private final int fromMin;
  private final int toMin;
  private final Locale locale;
  private final StringBuilder svg = new StringBuilder();
  private int row;

  private TimeLine(PlanProblem problem, Plan plan, Window shown, Locale locale) {
    this.problem = problem;
    this.plan = plan;
    this.fromMin = shown.fromMin();
    this.toMin = shown.toMin();
    this.locale = locale;
  }

  /** Draws what lies in a window. */
  static String of(PlanProblem problem, Plan plan, Window shown, Locale locale) {
    return new TimeLine(problem, plan, shown, locale).draw();
  }

  private String draw() {
    Map<String, Step> steps = problem.stepsByKey();
    for (Resource person : problem.people()) {
      heading(person.words());
      person.windows().forEach(w -> box("tl-hours", w.fromMin(), w.toMin(), "", ROW));
      bars(steps, p -> person.key().equals(p.person()), "tl-hands");
    }
    heading("Watched");
    bars(steps, p -> isKind(steps, p, StepKind.WATCH), "tl-watch");
    for (Resource thing : problem.resources()) {
      if (thing.kind() != Resource.Kind.PERSON && isUsed(thing)) {
        heading(thing.words() + (thing.capacity() > 1 ? " ×" + thing.capacity() : ""));
        held(thing, steps);
      }
    }
    int height = HEAD + row * ROW + 4;
    return "<svg class=\"time-line\" role=\"img\" viewBox=\"0 0 "
        + (LEFT + WIDTH)
        + " "
        + height
        + "\" aria-label=\""
        + text(label())
        + "\">"
        + scale(height)
        + svg
        + "</svg>";
  }

  private String label() {
    return "Plan from "
        + day(problem.clock(fromMin))
        + " to "
        + day(problem.clock(toMin))
        + " by hands, watch and things; the list below says the same in words";
  }

  private static boolean isKind(Map<String, Step> steps, Placed placed, StepKind kind) {
    Step step = steps.get(placed.step());
    return step != null && step.kind() == kind;
  }

  private boolean isUsed(Resource thing) {
    return problem.spans().stream().anyMatch(s -> s.resource().equals(thing.key()))
        || problem.steps().stream().anyMatch(s -> s.uses().containsKey(thing.key()));
  }

  private void heading(String words) {
    row++;
    int y = HEAD + (row - 1) * ROW;
    svg.append("<text class=\"tl-name\" x=\"4\" y=\"")
        .append(y + 22)
        .append("\">")
        .append(text(words))
        .append("</text><line class=\"tl-rule\" x1=\"0\" x2=\"")
        .append(LEFT + WIDTH)
        .append("\" y1=\"")
        .append(y)
        .append("\" y2=\"")
        .append(y)
        .append("\"/>");
  }

  private void bars(
      Map<String, Step> steps, java.util.function.Predicate<Placed> which, String css) {
    for (Placed placed : plan.placed()) {
      Step step = steps.get(placed.step());
      if (step != null && which.test(placed)) {
        box(css, placed.startMin(), placed.endMin(), step.words(), BAR);
      }
    }
  }

  private void held(Resource thing, Map<String, Step> steps) {
    Map<String, Placed> places = plan.byStep();
    for (Span span : problem.spans()) {
      Placed from = places.get(span.fromStep());
      Placed to = places.get(span.toStep());
      Step first = steps.get(span.fromStep());
      if (span.resource().equals(thing.key()) && from != null && to != null && first != null) {
        String many = span.amount() > 1 ? " (" + span.amount() + ")" : "";
        box("tl-held", from.startMin(), to.endMin(), first.batch() + many, BAR);
      }
    }
    for (Placed placed : plan.placed()) {
      Step step = steps.get(placed.step());
      if (step != null && step.uses().containsKey(thing.key())) {
        box("tl-held", placed.startMin(), placed.endMin(), step.batch(), BAR);
      }
    }
  }

  private void box(String css, int from, int to, String words, int height) {
    int start = Math.max(from, fromMin);
    int end = Math.min(to, toMin);
    if (start >= end) {
      return;
    }
    double x = x(start);
    double width = Math.max(1.5, x(end) - x);
    int y = HEAD + (row - 1) * ROW + (ROW - height) / 2;
    svg.append(
        String.format(
            Locale.ROOT,
            "<g><rect class=\"%s\" x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"%d\"/>",
            css,
            x,
            y,
            width,
            height));
    if (!words.isEmpty()) {
      svg.append("<title>").append(text(clock(from) + " " + words)).append("</title>");
      if (words.length() * LETTER < width - 6) {
        svg.append(
            String.format(
                Locale.ROOT, "<text class=\"%s-words\" x=\"%.1f\" y=\"%d\">", css, x + 4, y + 15));
        svg.append(text(words)).append("</text>");
      }
    }
    svg.append("</g>");
  }

  private double x(int minute) {
    return LEFT + WIDTH * (minute - fromMin) / (double) (toMin - fromMin);
  }

  /** Days, or hours where less than three days are shown. */
  private String scale(int height) {
    StringBuilder scale = new StringBuilder();
    boolean hours = toMin - fromMin < 3 * 1440;
    for (Mark mark : hours ? hours() : days()) {
      scale.append(
          String.format(
              Locale.ROOT,
              "<line class=\"tl-tick\" x1=\"%.1f\" x2=\"%.1f\" y1=\"18\" y2=\"%d\"/>"
                  + "<text class=\"tl-time\" x=\"%.1f\" y=\"14\">%s</text>",
              x(mark.minute()),
              x(mark.minute()),
              height,
              x(mark.minute()) + 2,
              text(mark.words())));
    }
    return scale.toString();
  }

  private record Mark(int minute, String words) {}

  private List<Mark> days() {
    List<Mark> marks = new ArrayList<>();
    LocalDate day = problem.clock(fromMin).toLocalDate();
    for (int d = 0; d < 60; d++) {
      ZonedDateTime midnight = day.plusDays(d).atStartOfDay(problem.zone());
      add(marks, midnight, DateTimeFormatter.ofPattern("EEE d", locale).format(midnight));
    }
    return marks;
  }

  private List<Mark> hours() {
    List<Mark> marks = new ArrayList<>();
    ZonedDateTime hour = problem.clock(fromMin).withMinute(0).withSecond(0);
    for (int h = 0; h < 72; h += 2) {
      ZonedDateTime at = hour.plusHours(h);
      add(marks, at, DateTimeFormatter.ofPattern("HH", locale).format(at));
    }
    return marks;
  }

  private void add(List<Mark> marks, ZonedDateTime at, String words) {
    int minute = problem.minuteOf(at.toInstant());
    if (minute >= fromMin && minute < toMin) {
      marks.add(new Mark(minute, words));
    }
  }

  private String clock(int minute) {
    return DateTimeFormatter.ofPattern("EEE d, HH:mm", locale).format(problem.clock(minute));
  }

  private String day(ZonedDateTime time) {
    return DateTimeFormatter.ofPattern("EEE d MMM", locale).format(time);
  }

  private static String text(@Nullable String words) {
    return String.valueOf(words)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}

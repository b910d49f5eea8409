package pourwright.page.now;

import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Span;
import pourwright.plan.Step;
import pourwright.plan.StepKind;

/**
 * Two days of hands, molds and waits on one strip of hours, as SVG that takes the page's colour.
 */
final class ClockStrip {
  private static final int HOURS = 48;
  private static final int LEFT = 110;
  private static final int WIDE = 860;
  private static final int ROW = 22;
  private static final int ROWS_MAX = 14;

  private final PlanProblem problem;
  private final Plan plan;
  private final Map<String, List<Bar>> rows = new LinkedHashMap<>();

  private record Bar(int from, int to, String words, String look) {}

  private ClockStrip(PlanProblem problem, Plan plan) {
    this.problem = problem;
    this.plan = plan;
  }

  /** The strip as SVG, every text in it escaped. */
  static String of(PlanProblem problem, Plan plan) {
    ClockStrip strip = new ClockStrip(problem, plan);
    strip.collect();
    return strip.svg();
  }

  private void collect() {
    Map<String, Step> steps = problem.stepsByKey();
    Map<String, Placed> places = plan.byStep();
    for (Placed placed : plan.placed()) {
      Step step = steps.get(placed.step());
      if (step == null || placed.startMin() > HOURS * 60 || step.kind() == StepKind.WAIT) {
        continue;
      }
      String row = row(placed.person());
      add(row, placed.startMin(), placed.endMin(), step.words(), step.hot() ? "hot" : "hands");
    }
    for (Span span : problem.spans()) {
      Placed from = places.get(span.fromStep());
      Placed to = places.get(span.toStep());
      if (from != null && to != null && span.resource().startsWith("mold:")) {
        add(
            span.resource().substring(5).replace('-', ' '),
            from.startMin(),
            to.endMin(),
            span.amount() + " in use",
            "mold");
      }
    }
    for (Placed placed : plan.placed()) {
      Step step = steps.get(placed.step());
      if (step != null && step.kind() == StepKind.WAIT && rows.size() < ROWS_MAX) {
        add(waits(step), placed.startMin(), placed.endMin(), step.words(), "wait");
      }
    }
  }

  /** The thing that waits, by its batch and the words after the colon, e.g. "C1, 4 Bollard". */
  private static String waits(Step step) {
    String words = step.words();
    String thing = words.substring(words.lastIndexOf(':') + 1).strip();
    int space = step.batch().indexOf(' '); // how far it is follows, where it is under way
    String batch = space < 0 ? step.batch() : step.batch().substring(0, space);
    return batch + ", " + (thing.length() > 12 ? thing.substring(0, 11) + "\u2026" : thing);
  }

  private static String row(@Nullable String person) {
    return person == null ? "watch" : person.substring(person.indexOf(':') + 1);
  }

  private void add(String row, int from, int to, String words, String look) {
    if (to > 0 && from < HOURS * 60 && to > from) {
      rows.computeIfAbsent(row, r -> new ArrayList<>())
          .add(new Bar(Math.max(0, from), Math.min(HOURS * 60, to), words, look));
    }
  }

  private static double x(int minute) {
    return LEFT + (double) minute * WIDE / (HOURS * 60);
  }

  private String svg() {
    int height = 30 + Math.max(1, rows.size()) * ROW;
    StringBuilder out = new StringBuilder(4000);
    out.append(
        String.format(
            Locale.ROOT,
            "<svg viewBox=\"0 0 %d %d\" role=\"img\" aria-labelledby=\"strip-title\""
                + " class=\"clock-strip\" font-size=\"12\" fill=\"currentColor\">"
                + "<title id=\"strip-title\">Hands, molds and waits in the next %d hours</title>",
            LEFT + WIDE + 10,
            height,
            HOURS));
    hours(out, height);
    int y = 26;
    for (Map.Entry<String, List<Bar>> row : rows.entrySet()) {
      text(out, 0, y + 14, row.getKey());
      for (Bar bar : row.getValue()) {
        bar(out, y, bar);
      }
      y += ROW;
    }
    if (rows.isEmpty()) {
      text(out, LEFT, 42, "Nothing waits for a hand.");
    }
    return out.append("</svg>").toString();
  }

  private void hours(StringBuilder out, int height) {
    ZonedDateTime hour = problem.clock(0).truncatedTo(ChronoUnit.HOURS).plusHours(1);
    for (int i = 0; i < HOURS; i++, hour = hour.plusHours(1)) {
      int minute = problem.minuteOf(hour.toInstant());
      boolean midnight = hour.getHour() == 0;
      if (hour.getHour() % 6 == 0 && minute <= HOURS * 60) {
        out.append(
            String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"18\" x2=\"%.1f\" y2=\"%d\" stroke=\"currentColor\""
                    + " stroke-opacity=\"%s\"/>",
                x(minute),
                x(minute),
                height,
                midnight ? "0.6" : "0.2"));
        text(
            out,
            x(minute) - 14,
            13,
            midnight
                ? hour.getDayOfWeek()
                    .getDisplayName(java.time.format.TextStyle.SHORT, Locale.ENGLISH)
                : String.format(Locale.ROOT, "%02d:00", hour.getHour()));
      }
    }
  }

  private static void bar(StringBuilder out, int y, Bar bar) {
    String fill = bar.look().equals("hot") ? "#c8642c" : "currentColor";
    String opacity =
        switch (bar.look()) {
          case "wait" -> "0.18";
          case "mold" -> "0.4";
          default -> "0.9";
        };
    out.append(
        String.format(
            Locale.ROOT,
            "<rect x=\"%.1f\" y=\"%d\" width=\"%.1f\" height=\"16\" rx=\"2\" fill=\"%s\""
                + " fill-opacity=\"%s\"><title>%s</title></rect>",
            x(bar.from()),
            y + 2,
            Math.max(2, x(bar.to()) - x(bar.from())),
            fill,
            opacity,
            escaped(bar.words())));
  }

  private static void text(StringBuilder out, double x, int y, String words) {
    out.append(
        String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%d\">%s</text>", x, y, escaped(words)));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}

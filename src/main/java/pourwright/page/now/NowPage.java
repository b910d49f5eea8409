package pourwright.page.now;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import pourwright.material.Material;
import pourwright.order.OrderLine;
import pourwright.page.Desk;
import pourwright.plan.Goal;
import pourwright.plan.MakePlan;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PourJob;
import pourwright.plan.Step;
import pourwright.plan.StepKind;
import pourwright.quantity.Counted;
import pourwright.work.WorkPlan;

/**
 * What the page shows: finished strings.
 *
 * @param purpose what is done here
 * @param day today, as the studio writes dates
 * @param strip the clock strip as SVG, empty without a plan
 * @param next what hands and eyes do next
 * @param late orders that will not make it
 * @param shortOf materials that are short
 * @param lastDays the last day to cast for the nearest parcels
 * @param trouble why there is no plan, else empty
 * @param waiting true while the first plan is being worked out
 * @param by how the plan came about
 */
public record NowPage(
    String purpose,
    String day,
    String strip,
    List<Line> next,
    List<Line> late,
    List<Line> shortOf,
    List<Line> lastDays,
    String trouble,
    boolean waiting,
    String by) {

  private static final int SHOWN = 8;
  private static final int LAST_DAYS = 3;

  /** One line: when or how much, and what. */
  public record Line(String when, String what) {}

  /** Whether there is a plan to speak of. */
  public boolean planned() {
    return !strip.isEmpty();
  }

  static NowPage of(String purpose, Desk desk, WorkAhead.Made made) {
    DateTimeFormatter full =
        DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL).withLocale(desk.locale());
    String day = desk.today().format(full);
    WorkPlan plan = made.plan();
    if (plan == null) {
      return new NowPage(
          purpose,
          day,
          "",
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          made.trouble(),
          made.notYet(),
          made.by());
    }
    Plan work = plan.plan();
    String trouble = String.join("; ", plan.reasons());
    if (made.leftOut() > 0) {
      trouble +=
          (trouble.isEmpty() ? "" : "; ")
              + Counted.of(
                  made.leftOut(),
                  "further order line is not planned yet.",
                  "further order lines are not planned yet.");
    }
    return new NowPage(
        purpose,
        day,
        work == null ? "" : ClockStrip.of(plan.problem(), work),
        work == null ? List.of() : next(plan, work, desk),
        work == null ? List.of() : late(plan, work),
        shortOf(plan),
        made.lastDays(),
        trouble,
        false,
        made.by());
  }

  private static List<Line> next(WorkPlan plan, Plan work, Desk desk) {
    Map<String, Step> steps = plan.problem().stepsByKey();
    DateTimeFormatter clock = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);
    List<Line> lines = new ArrayList<>();
    for (Placed placed : work.placed()) {
      Step step = steps.get(placed.step());
      ZonedDateTime from = plan.problem().clock(placed.startMin());
      boolean over = plan.problem().clock(placed.endMin()).toInstant().isBefore(desk.now());
      if (step != null && step.kind() != StepKind.WAIT && !over && lines.size() < SHOWN) {
        lines.add(new Line(clock.format(from), step.words()));
      }
    }
    return lines;
  }

  private static List<Line> late(WorkPlan plan, Plan work) {
    Map<String, Integer> days = new LinkedHashMap<>();
    for (Goal goal : plan.problem().goals()) {
      int over = work.at(goal.lastStep()).endMin() - goal.dueMin();
      if (over > 0) {
        days.merge(goal.words(), (over + 1439) / 1440, Math::max);
      }
    }
    return days.entrySet().stream()
        .limit(SHOWN)
        .map(e -> new Line(e.getValue() + " d late", e.getKey()))
        .toList();
  }

  private static List<Line> shortOf(WorkPlan plan) {
    List<Line> lines = new ArrayList<>();
    plan.make()
        .shortages()
        .forEach(
            (code, units) -> {
              Material material = plan.book().materials().get(code);
              String amount =
                  String.format(
                      Locale.ROOT,
                      "%,.0f %s",
                      material.unit().fromSmall(units),
                      material.unit().unit());
              lines.add(new Line(amount, material.name()));
            });
    return lines;
  }

  /** For lines that wait for a cast; one whose day has gone says so. */
  static List<Line> lastDays(WorkPlan plan, LastDays known) {
    List<Line> lines = new ArrayList<>();
    Set<String> ofCasts =
        plan.make().pours().stream()
            .filter(p -> !p.after().isEmpty())
            .map(PourJob::key)
            .collect(Collectors.toSet());
    for (MakePlan.Served served : plan.make().served()) {
      OrderLine line = served.line();
      LocalDate due = line.dueOn();
      if (Collections.disjoint(served.pours(), ofCasts)
          || due == null
          || lines.size() >= LAST_DAYS
          || due.isBefore(plan.inHand().today())) {
        continue;
      }
      known
          .toCast(line, plan.book(), plan.habits(), plan.floor())
          .ifPresent(
              last ->
                  lines.add(
                      new Line(
                          last.isBefore(plan.inHand().today()) ? "gone, " + last : "" + last,
                          plan.book().candle(line.design()).name() + " for the parcel of " + due)));
    }
    return lines;
  }
}

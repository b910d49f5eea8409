package pourwright.work;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.property.ProductId;
import biweekly.util.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.Map;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.PlanProblem;
import pourwright.plan.Step;
import pourwright.plan.StepKind;

/**
 * A plan as an iCalendar file (RFC 5545): one event for each step that needs somebody, at times of
 * the world's clock, so that any calendar shows it right whatever its zone. An event keeps its
 * identifier when the step moves, so that a calendar that reads the feed again moves it too.
 */
public final class PlanCalendar {
  private static final Duration READ_AGAIN = Duration.builder().hours(1).build();

  private PlanCalendar() {}

  /**
   * The calendar of a plan.
   *
   * @param studio the studio's name, shown as the calendar's
   * @param now when it was made
   */
  public static String of(PlanProblem problem, Plan plan, String studio, Instant now) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(new ProductId("-//Pourwright//Plan//EN"));
    calendar.setName(studio);
    calendar.setRefreshInterval(READ_AGAIN);
    Map<String, Step> steps = problem.stepsByKey();
    for (Placed placed : plan.placed()) {
      Step step = steps.get(placed.step());
      if (step != null && isAttended(step)) {
        calendar.addEvent(event(problem, placed, step, now));
      }
    }
    return Biweekly.write(calendar).go();
  }

  private static boolean isAttended(Step step) {
    return step.kind() != StepKind.WAIT || step.hot();
  }

  private static VEvent event(PlanProblem problem, Placed placed, Step step, Instant now) {
    VEvent event = new VEvent();
    event.setUid(uid(step.key()));
    event.setDateTimeStamp(Date.from(now));
    event.setSummary(step.words());
    event.setDateStart(Date.from(problem.clock(placed.startMin()).toInstant()));
    event.setDateEnd(Date.from(problem.clock(placed.endMin()).toInstant()));
    event.addCategories(step.kind().words());
    event.setTransparency(step.kind() != StepKind.HANDS);
    event.setDescription("Batch " + step.batch() + ", " + step.kind().words());
    return event;
  }

  /** The step's key in letters that an identifier may have. */
  private static String uid(String key) {
    StringBuilder uid = new StringBuilder();
    key.codePoints()
        .forEach(
            c -> {
              boolean plain = c < 128 && (Character.isLetterOrDigit(c) || c == '-');
              uid.append(plain ? Character.toString(c) : "." + Integer.toHexString(c) + ".");
            });
    return uid.append("@pourwright").toString();
  }
}

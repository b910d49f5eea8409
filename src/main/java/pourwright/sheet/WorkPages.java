package pourwright.sheet;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Map;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.plan.Step;
import pourwright.plan.StepKind;
import pourwright.sheet.Ink.Pen;
import pourwright.work.WorkPlan;

/** The order of work, day by day, with clock times and boxes to tick; waits stand back. */
final class WorkPages {
  private final WorkPlan plan;
  private final Plan work;
  private final Leaf leaf;
  private final Ink ink;
  private final Map<String, Step> steps;

  WorkPages(WorkPlan plan, Plan work, Leaf leaf) {
    this.plan = plan;
    this.work = work;
    this.leaf = leaf;
    this.ink = leaf.ink();
    this.steps = plan.problem().stepsByKey();
  }

  void draw() {
    leaf.chapter("Order of work", "hands \u25a0   watch \u25a1   wait \u2026");
    LocalDate day = null;
    for (Placed placed : work.placed()) {
      Step step = steps.get(placed.step());
      if (step == null || (step.kind() == StepKind.WAIT && step.minutes() < 60)) {
        continue;
      }
      ZonedDateTime begins = plan.problem().clock(placed.startMin());
      if (!begins.toLocalDate().equals(day)) {
        day = begins.toLocalDate();
        leaf.need(16);
        leaf.down(2.5);
        ink.text(Leaf.LEFT, leaf.y(), Figures.day(day), new Pen(11, true, Ink.SLATE));
        ink.line(Leaf.LEFT, leaf.y() + 1.6, leaf.right(), leaf.y() + 1.6, 0.25, Ink.SLATE);
        leaf.down(7);
      }
      step(step, placed, begins);
    }
  }

  private void step(Step step, Placed placed, ZonedDateTime begins) {
    leaf.need(6);
    ZonedDateTime ends = plan.problem().clock(placed.endMin());
    if (step.kind() == StepKind.WAIT) {
      ink.text(Leaf.LEFT + 8, leaf.y(), Figures.clock(begins), Pen.SMALL);
      ink.within(Leaf.LEFT + 36, leaf.y(), leaf.width() - 84, step.words(), Pen.SMALL);
      ink.right(
          leaf.right(),
          leaf.y(),
          Figures.length(step.minutes())
              + ", until "
              + Figures.shortDay(ends.toLocalDate())
              + " "
              + Figures.clock(ends),
          Pen.SMALL);
      leaf.down(4.4);
      return;
    }
    ink.tick(Leaf.LEFT, leaf.y());
    if (step.kind() == StepKind.HANDS) {
      ink.fill(Leaf.LEFT + 5, leaf.y() - 2.4, 1.4, 2.6, step.hot() ? Ink.EMBER : Ink.SLATE);
    } else {
      ink.frame(Leaf.LEFT + 5, leaf.y() - 2.4, 1.4, 2.6, 0.25, Ink.EMBER);
    }
    ink.text(
        Leaf.LEFT + 8,
        leaf.y(),
        Figures.clock(begins) + "\u2013" + Figures.clock(ends),
        Pen.STRONG);
    ink.text(Leaf.LEFT + 30, leaf.y(), step.batch(), Pen.WARM);
    String person = placed.person();
    String who = person == null ? "watch" : person.substring(person.indexOf(':') + 1);
    ink.within(Leaf.LEFT + 40, leaf.y(), leaf.width() - 58, step.words(), Pen.BODY);
    ink.right(leaf.right(), leaf.y(), who, Pen.SMALL);
    leaf.down(5.2);
  }
}

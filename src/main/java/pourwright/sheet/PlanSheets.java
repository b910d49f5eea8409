package pourwright.sheet;

import java.io.OutputStream;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pourwright.order.OrderLine;
import pourwright.plan.MakePlan;
import pourwright.plan.Placed;
import pourwright.plan.Plan;
import pourwright.sheet.Ink.Pen;
import pourwright.work.WorkPlan;

/**
 * The sheets of a plan: what to make, a card for each mixing and each pitcher, the picking list
 * with its lots, and the order of work by the clock.
 */
public final class PlanSheets {
  private PlanSheets() {}

  /**
   * Writes all sheets as one PDF.
   *
   * @param plan what is planned
   * @param paper what is in the printer
   * @param studio name of the studio, for the foot
   * @param printed when, for the foot
   * @param to is written to and left open
   */
  public static void write(
      WorkPlan plan, Paper paper, String studio, ZonedDateTime printed, OutputStream to) {
    try (Ink ink = new Ink(paper)) {
      ink.title("Plan of " + studio);
      String stamp = Figures.shortDay(printed.toLocalDate()) + " " + Figures.clock(printed);
      Leaf leaf = new Leaf(ink, studio, stamp);
      new Cover(plan, leaf).draw(printed.toLocalDate());
      new MixCards(plan, leaf).draw();
      new PourCards(plan, leaf).draw();
      new PickPages(plan, leaf).draw();
      Plan work = plan.plan();
      if (work != null) {
        new WorkPages(plan, work, leaf).draw();
      }
      leaf.feet();
      ink.save(to);
    }
  }

  /** The first page: three figures, what is late or short, and the orders. */
  private static final class Cover {
    private final WorkPlan plan;
    private final Leaf leaf;
    private final Ink ink;

    Cover(WorkPlan plan, Leaf leaf) {
      this.plan = plan;
      this.leaf = leaf;
      this.ink = leaf.ink();
    }

    void draw(LocalDate today) {
      leaf.chapter("What to make", Figures.day(today));
      figures();
      boxes();
      orders();
    }

    private void figures() {
      MakePlan make = plan.make();
      int wanted = make.served().stream().mapToInt(s -> s.line().quantity()).sum();
      int there = make.served().stream().mapToInt(MakePlan.Served::fromStock).sum();
      String[][] all = {
        {"" + wanted, "candles wanted"},
        {"" + there, "of them in stock"},
        {"" + make.casts().size(), "casts"},
        {"" + make.pours().size(), "pours"},
        {lastDay(), "all boxed by"}
      };
      double x = Leaf.LEFT;
      double step = leaf.width() * 0.18;
      ink.fill(Leaf.LEFT, leaf.y() - 5, leaf.width(), 20, Ink.SLAB);
      for (String[] one : all) {
        boolean last = one == all[all.length - 1];
        double room = (last ? leaf.right() - x : step) - 6;
        ink.fitting(x + 4, leaf.y() + 5, room, one[0], new Pen(16, true, Ink.SLATE));
        ink.text(x + 4, leaf.y() + 10.5, one[1], Pen.SMALL);
        x += step;
      }
      leaf.down(23);
    }

    private String lastDay() {
      Plan work = plan.plan();
      if (work == null) {
        return "no plan";
      }
      int end = work.placed().stream().mapToInt(Placed::endMin).max().orElse(0);
      return work.placed().isEmpty()
          ? "now"
          : Figures.shortDay(plan.problem().clock(end).toLocalDate());
    }

    private void boxes() {
      for (String reason : plan.reasons()) {
        leaf.to(ink.wrapped(Leaf.LEFT, leaf.y(), leaf.width(), reason, Pen.WARM) + 1);
      }
      Map<String, Long> shortages = plan.make().shortages();
      if (shortages.isEmpty()) {
        ink.text(Leaf.LEFT, leaf.y(), "Nothing is short.", Pen.STRONG);
        leaf.down(8);
        return;
      }
      ink.text(Leaf.LEFT, leaf.y(), "Short: buy before you begin", Pen.WARM);
      leaf.down(5.5);
      int column = 0;
      for (var entry : shortages.entrySet()) {
        leaf.need(6);
        double x = Leaf.LEFT + column * leaf.width() / 2;
        var material = plan.book().materials().get(entry.getKey());
        ink.tick(x, leaf.y());
        ink.within(x + 6, leaf.y(), leaf.width() / 2 - 36, material.name(), Pen.BODY);
        ink.right(
            x + leaf.width() / 2 - 6,
            leaf.y(),
            Figures.amount(material.unit(), entry.getValue()),
            Pen.STRONG);
        column = 1 - column;
        leaf.down(column == 0 ? 5.2 : 0);
      }
      leaf.down(column == 0 ? 4 : 9);
    }

    private void orders() {
      double[] at = {
        Leaf.LEFT, Leaf.LEFT + 30, Leaf.LEFT + 92, Leaf.LEFT + 105, Leaf.LEFT + 120, Leaf.LEFT + 143
      };
      List<String> names = List.of("order", "candle", "pieces", "in stock", "due", "boxed");
      leaf.need(20);
      leaf.columns(names, at);
      for (MakePlan.Served served : plan.make().served()) {
        if (leaf.y() + 6 > leaf.bottom()) {
          leaf.next();
          leaf.columns(names, at);
        }
        OrderLine line = served.line();
        ink.within(at[0], leaf.y(), 28, line.order(), Pen.BODY);
        ink.within(at[1], leaf.y(), 60, plan.book().candle(line.design()).name(), Pen.BODY);
        ink.right(at[2] + 8, leaf.y(), "" + line.quantity(), Pen.STRONG);
        ink.right(at[3] + 8, leaf.y(), "" + served.fromStock(), Pen.BODY);
        LocalDate due = line.dueOn();
        ink.text(at[4], leaf.y(), due == null ? "\u2013" : Figures.shortDay(due), Pen.BODY);
        boxed(served, due, at[5]);
        leaf.down(5.1);
      }
    }

    private void boxed(
        MakePlan.Served served, @org.jspecify.annotations.Nullable LocalDate due, double x) {
      Plan work = plan.plan();
      if (served.pours().isEmpty() || work == null) {
        ink.text(x, leaf.y(), work == null ? "\u2013" : "ready", Pen.BODY);
        return;
      }
      int end = 0;
      for (Placed placed : work.placed()) {
        for (String pour : served.pours()) {
          end = placed.step().startsWith(pour + "/") ? Math.max(end, placed.endMin()) : end;
        }
      }
      LocalDate day = plan.problem().clock(end).toLocalDate();
      long days = due == null ? 0 : due.until(day, java.time.temporal.ChronoUnit.DAYS);
      String late = days > 0 ? String.format(Locale.ROOT, ", %d d late", days) : "";
      ink.fitting(
          x,
          leaf.y(),
          leaf.right() - x,
          Figures.shortDay(day) + late,
          days > 0 ? Pen.WARM : Pen.BODY);
    }
  }
}

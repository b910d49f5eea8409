package pourwright.sheet;

import java.util.ArrayList;
import java.util.List;
import pourwright.card.CandleDesign;
import pourwright.card.PourCard;
import pourwright.card.ResolvedPour;
import pourwright.card.Scales;
import pourwright.card.Vessel;
import pourwright.plan.Plan;
import pourwright.plan.PourJob;
import pourwright.pour.Dose;
import pourwright.quantity.Counted;
import pourwright.sheet.Ink.Pen;
import pourwright.work.WorkPlan;

/** A card of half a page for each pitcher: amounts, the load both ways, windows, fill lines. */
final class PourCards {
  private static final double HEIGHT = 122;

  private final WorkPlan plan;
  private final Leaf leaf;
  private final Ink ink;

  PourCards(WorkPlan plan, Leaf leaf) {
    this.plan = plan;
    this.leaf = leaf;
    this.ink = leaf.ink();
  }

  void draw() {
    if (plan.make().pours().isEmpty()) {
      return;
    }
    leaf.chapter("Pour sheets", Counted.of(plan.make().pours().size(), "pour", "pours"));
    for (PourJob pour : plan.make().pours()) {
      leaf.need(HEIGHT);
      double top = leaf.y() - 4;
      card(pour, top);
      leaf.to(top + HEIGHT + 4);
    }
  }

  private void card(PourJob job, double top) {
    PourCard card = plan.book().pour(job.pour());
    ink.frame(Leaf.LEFT, top, leaf.width(), HEIGHT - 2, 0.25, Ink.DUST);
    ink.fill(Leaf.LEFT, top, leaf.width(), 11, Ink.SLAB);
    ink.text(Leaf.LEFT + 4, top + 7.6, job.key(), new Pen(15, true, Ink.EMBER));
    ink.within(Leaf.LEFT + 20, top + 7.4, 105, card.name(), new Pen(12, true, Ink.SLATE));
    ink.right(leaf.right() - 4, top + 7.2, when(job), Pen.STRONG);
    amounts(job, card.resolve(plan.book().materials()), top + 20);
    windows(card, job, top + 16);
    candles(job, top + 62);
    blanks(top + HEIGHT - 8);
  }

  private String when(PourJob job) {
    Plan work = plan.plan();
    if (work == null) {
      return "";
    }
    var at = plan.problem().clock(work.at(job.key() + "/melt").startMin());
    return "melt " + Figures.shortDay(at.toLocalDate()) + "  " + Figures.clock(at);
  }

  private void amounts(PourJob job, ResolvedPour pour, double top) {
    List<String[]> rows = new ArrayList<>();
    for (List<ResolvedPour.Share> part : List.of(pour.waxes(), pour.extras(), pour.fragrances())) {
      for (ResolvedPour.Share share : part) {
        rows.add(
            new String[] {
              share.material().name(), Figures.grams(job.needs().get(share.material().code()))
            });
      }
    }
    double y = top;
    for (String[] row : rows) {
      ink.tick(Leaf.LEFT + 4, y);
      ink.right(Leaf.LEFT + 50, y, row[1], Pen.NUMERAL);
      ink.text(Leaf.LEFT + 52, y, "g", Pen.BODY);
      ink.within(Leaf.LEFT + 58, y, 46, row[0], Pen.BODY);
      y += 10.5;
    }
    ink.line(Leaf.LEFT + 10, y - 7.5, Leaf.LEFT + 100, y - 7.5, 0.2, Ink.DUST);
    ink.right(Leaf.LEFT + 50, y - 2.6, Figures.grams(job.totalG()), Pen.STRONG);
    ink.text(Leaf.LEFT + 52, y - 2.6, "g in the pitcher", Pen.SMALL);
    Scales scales = Scales.of(plan.book());
    double under = y + 2;
    for (List<ResolvedPour.Share> part : List.of(pour.extras(), pour.fragrances())) {
      for (ResolvedPour.Share share : part) {
        String name = share.material().name();
        String fine =
            scales
                .tooFine(job.needs().get(share.material().code()))
                .map(f -> name + ": " + f.sentence())
                .orElse("");
        if (!fine.isEmpty()) {
          under = ink.wrapped(Leaf.LEFT + 4, under, 98, fine, new Pen(7.5, false, Ink.EMBER));
        }
      }
    }
  }

  private void windows(PourCard card, PourJob job, double top) {
    double x = Leaf.LEFT + 108;
    Dose dose = new Dose(job.waxG(), job.fragranceG());
    String said = card.loadOf() == Dose.LoadOf.TOTAL ? "on the total" : "on the wax";
    ink.text(x, top, "fragrance load, as the card says it: " + said, Pen.SMALL);
    ink.text(
        x,
        top + 6,
        Figures.percent(dose.loadOfTotal(), 2)
            + " of the total = "
            + Figures.percent(dose.loadOfWax(), 2)
            + " of the wax",
        Pen.STRONG);
    PourCard.Temperatures t = card.temperatures();
    ink.text(x, top + 14, "stir the scent in", Pen.SMALL);
    ink.text(x, top + 21, window(t.addFromC(), t.addToC()), new Pen(15, true, Ink.SLATE));
    ink.text(x + 34, top + 14, "pour", Pen.SMALL);
    ink.text(x + 34, top + 21, window(t.pourFromC(), t.pourToC()), new Pen(15, true, Ink.SLATE));
    ink.text(x, top + 28, "Thermometer in the wax, not on the wall. Never leave it", Pen.SMALL);
    ink.text(x, top + 31.5, "alone; no water near it; vessels dry, warm and wicked.", Pen.SMALL);
    ink.text(
        x,
        top + 37,
        "Rest " + Counted.of(Math.round(card.restDays()), "day", "days") + " before test or sale.",
        Pen.BODY);
  }

  private static String window(double from, double to) {
    return Figures.number(from, 0) + "\u2013" + Figures.number(to, 0) + " \u00b0C";
  }

  private void candles(PourJob job, double top) {
    ink.line(Leaf.LEFT + 4, top, leaf.right() - 4, top, 0.2, Ink.DUST);
    int shown = Math.min(4, job.fills().size());
    double each = (leaf.width() - 8) / Math.max(3, shown);
    double x = Leaf.LEFT + 4;
    for (PourJob.Fill fill : job.fills().subList(0, shown)) {
      CandleDesign design = plan.book().candle(fill.design());
      Vessel vessel = plan.book().vessel(design.vessel());
      ink.text(x, top + 6, fill.candles() + " \u00d7 " + vessel.name(), Pen.STRONG);
      ink.text(x, top + 10.5, Figures.grams(fill.netG()) + " g each", Pen.BODY);
      ink.within(
          x,
          top + 15,
          each - 4,
          design.wicks().count()
              + " \u00d7 "
              + plan.book().materials().get(design.wicks().wick()).name(),
          Pen.SMALL);
      double scale = SectionDrawing.scale(List.of(vessel), each - 6, 26);
      double[] box = {x, top + 16, SectionDrawing.widestMm(vessel) / scale, 32};
      double wax = vessel.cavity().heightMm() - design.headspaceMm();
      SectionDrawing.draw(ink, box, vessel, scale, wax, design.wicks().count());
      SectionDrawing.caption(ink, box, vessel, scale);
      x += each;
    }
    if (shown < job.fills().size()) {
      ink.text(Leaf.LEFT + 4, top + 49, "and " + (job.fills().size() - shown) + " more", Pen.SMALL);
    }
  }

  private void blanks(double y) {
    String[] names = {"scent in at, \u00b0C", "poured at, \u00b0C", "room, \u00b0C", "by"};
    double x = Leaf.LEFT + 4;
    for (String name : names) {
      ink.line(x, y, x + 38, y, 0.25, Ink.SLATE);
      ink.text(x, y + 4, name, Pen.SMALL);
      x += 44;
    }
  }
}

package pourwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pourwright.card.MixCard;
import pourwright.card.ResolvedMix;
import pourwright.card.Scales;
import pourwright.card.Vessel;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.material.Property;
import pourwright.plan.CastJob;
import pourwright.plan.Plan;
import pourwright.quantity.Counted;
import pourwright.sheet.Ink.Pen;
import pourwright.work.WorkPlan;

/** A card of half a page for each mixing: large amounts, both ratios, the molds, room to write. */
final class MixCards {
  private static final double HEIGHT = 122;

  private final WorkPlan plan;
  private final Leaf leaf;
  private final Ink ink;

  MixCards(WorkPlan plan, Leaf leaf) {
    this.plan = plan;
    this.leaf = leaf;
    this.ink = leaf.ink();
  }

  void draw() {
    if (plan.make().casts().isEmpty()) {
      return;
    }
    leaf.chapter("Mix sheets", Counted.of(plan.make().casts().size(), "cast", "casts"));
    for (CastJob cast : plan.make().casts()) {
      leaf.need(HEIGHT);
      double top = leaf.y() - 4;
      card(cast, top);
      leaf.to(top + HEIGHT + 4);
    }
  }

  private void card(CastJob cast, double top) {
    MixCard card = plan.book().mix(cast.mix());
    ResolvedMix mix = card.resolve(plan.book().materials());
    ink.frame(Leaf.LEFT, top, leaf.width(), HEIGHT - 2, 0.25, Ink.DUST);
    ink.fill(Leaf.LEFT, top, leaf.width(), 11, Ink.SLAB);
    ink.text(Leaf.LEFT + 4, top + 7.6, cast.key(), new Pen(15, true, Ink.EMBER));
    ink.within(Leaf.LEFT + 20, top + 7.4, 105, card.name(), new Pen(12, true, Ink.SLATE));
    ink.right(leaf.right() - 4, top + 7.2, when(cast), Pen.STRONG);
    double amountsEnd = amounts(cast, mix, top + 20);
    ratios(card, mix, top + 20);
    molds(cast, top + 46);
    double y = Math.max(amountsEnd, top + 62);
    y = warnings(cast, y + 2);
    steps(card, Math.max(y, top + 88));
  }

  private String when(CastJob cast) {
    Plan work = plan.plan();
    if (work == null) {
      return "";
    }
    var at = plan.problem().clock(work.at(cast.key() + "/cast").startMin());
    return Figures.shortDay(at.toLocalDate()) + "  " + Figures.clock(at);
  }

  /** What goes into the bucket, in the order it goes in. */
  private double amounts(CastJob cast, ResolvedMix mix, double top) {
    List<String[]> rows = new ArrayList<>();
    for (Material part : mix.parts()) {
      if (part.kind() == MaterialKind.PIGMENT || part.kind() == MaterialKind.LIQUID_COLOUR) {
        rows.add(row(part.name(), cast.needs().get(part.code())));
      }
    }
    rows.add(0, row("Water", cast.waterG()));
    rows.add(row(mix.powder().name(), cast.needs().get(mix.powder().code())));
    for (Material part : mix.parts()) {
      if (part.kind() != MaterialKind.PIGMENT && part.kind() != MaterialKind.LIQUID_COLOUR) {
        rows.add(row(part.name(), cast.needs().get(part.code())));
      }
    }
    double y = top;
    for (String[] row : rows) {
      ink.tick(Leaf.LEFT + 4, y);
      ink.right(Leaf.LEFT + 50, y, row[1], Pen.NUMERAL);
      ink.text(Leaf.LEFT + 52, y, "g", Pen.BODY);
      ink.within(Leaf.LEFT + 58, y, 44, row[0], Pen.BODY);
      y += 10.5;
    }
    ink.line(Leaf.LEFT + 10, y - 7.5, Leaf.LEFT + 100, y - 7.5, 0.2, Ink.DUST);
    ink.right(Leaf.LEFT + 50, y - 2.6, Figures.grams(cast.totalG()), Pen.STRONG);
    ink.text(
        Leaf.LEFT + 52,
        y - 2.6,
        "g in the bucket, " + Figures.number(cast.freshMl(), 0) + " ml in the molds",
        Pen.SMALL);
    return y + 2;
  }

  private static String[] row(String name, double grams) {
    return new String[] {name, Figures.grams(grams)};
  }

  /** Powder to water both ways, with the bulk density that joins them and where it is from. */
  private void ratios(MixCard card, ResolvedMix mix, double top) {
    double x = Leaf.LEFT + 108;
    Double volume = mix.mix().powderToWaterByVolume();
    double mass = 1 / mix.mix().waterToPowder();
    ink.text(x, top - 4, "powder : water", Pen.SMALL);
    ink.text(x, top + 2, Figures.number(mass, 2) + " : 1 by mass", strong(card, MixCard.By.MASS));
    if (volume != null) {
      ink.text(
          x,
          top + 7.5,
          Figures.number(volume, 2) + " : 1 by volume",
          strong(card, MixCard.By.VOLUME));
      mix.powder()
          .property(Property.BULK_DENSITY_G_PER_ML)
          .ifPresent(
              bulk -> {
                ink.text(
                    x,
                    top + 12.5,
                    "bulk "
                        + Figures.number(bulk.value(), 2)
                        + " g/ml \u00b1 "
                        + Figures.percent(bulk.relativeUncertainty(), 0),
                    Pen.SMALL);
                ink.text(x, top + 16, bulk.origin().words(), Pen.SMALL);
              });
    }
    ink.text(
        x,
        top + 20.5,
        "water to powder " + Figures.number(mix.mix().waterToPowder(), 3),
        Pen.SMALL);
  }

  private static Pen strong(MixCard card, MixCard.By by) {
    return card.ratio().by() == by ? Pen.STRONG : Pen.BODY;
  }

  private void molds(CastJob cast, double top) {
    String what =
        cast.fills().stream()
            .map(f -> f.pieces() + " \u00d7 " + plan.book().vessel(f.vessel()).name())
            .collect(Collectors.joining(", "));
    double x = Leaf.LEFT + 108;
    ink.within(x, top, leaf.width() - 112, what, Pen.STRONG);
    List<Vessel> vessels =
        cast.fills().stream().map(f -> plan.book().vessel(f.vessel())).distinct().toList();
    double room = leaf.width() - 116;
    double gap = 4;
    double scale = SectionDrawing.scale(vessels, room - gap * (vessels.size() - 1), 30);
    for (Vessel vessel : vessels) {
      double width = SectionDrawing.widestMm(vessel) / scale;
      SectionDrawing.draw(ink, new double[] {x, top + 3, width, 36}, vessel, scale, 0, 0);
      x += width + gap;
    }
    ink.text(Leaf.LEFT + 108, top + 38.5, "all at 1 : " + SectionDrawing.said(scale), Pen.SMALL);
  }

  private double warnings(CastJob cast, double top) {
    double y = top;
    List<String> said = new ArrayList<>(cast.warnings());
    Scales scales = Scales.of(plan.book());
    MixCard card = plan.book().mix(cast.mix());
    for (Material part : card.resolve(plan.book().materials()).parts()) {
      scales
          .tooFine(cast.needs().get(part.code()))
          .ifPresent(fine -> said.add(part.name() + ": " + fine.sentence()));
    }
    for (String warning : said) {
      y = ink.wrapped(Leaf.LEFT + 4, y, 98, warning, new Pen(7.5, false, Ink.EMBER));
    }
    return y;
  }

  private void steps(MixCard card, double top) {
    ink.line(Leaf.LEFT + 4, top, leaf.right() - 4, top, 0.2, Ink.DUST);
    String life =
        "Colour into water, powder into water. Start with a little less water and add it weighed. "
            + "In the molds within "
            + Figures.number(card.times().potLifeMin(), 0)
            + " minutes; never add water to a mix that stiffens. Level, tap, cover. Dust mask on.";
    double y = ink.wrapped(Leaf.LEFT + 4, top + 5, leaf.width() - 8, life, Pen.BODY);
    String demold =
        "Demold after "
            + Figures.length((int) (card.times().demoldFromH() * 60))
            + ", at the latest after "
            + Figures.length((int) (card.times().demoldToH() * 60))
            + "; keep damp for "
            + Figures.length((int) (card.times().hardenH() * 60))
            + ".";
    ink.wrapped(Leaf.LEFT + 4, y + 0.5, leaf.width() - 8, demold, Pen.BODY);
    String[] blanks = {"water really used, g", "stiffened at", "room, \u00b0C", "by"};
    double x = Leaf.LEFT + 4;
    for (String blank : blanks) {
      ink.text(x, top + 26, blank, Pen.SMALL);
      ink.line(x, top + 22, x + 38, top + 22, 0.25, Ink.SLATE);
      x += 44;
    }
  }
}

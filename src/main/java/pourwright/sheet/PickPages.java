package pourwright.sheet;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pourwright.material.Material;
import pourwright.plan.MakePlan;
import pourwright.sheet.Ink.Pen;
import pourwright.stock.Lot;
import pourwright.stock.Shelf;
import pourwright.work.WorkPlan;

/** The picking list: each material, the lots it comes from, and which batch gets how much. */
final class PickPages {
  private final WorkPlan plan;
  private final Leaf leaf;
  private final Ink ink;
  private final Map<Long, Lot> lots = new HashMap<>();

  PickPages(WorkPlan plan, Leaf leaf) {
    this.plan = plan;
    this.leaf = leaf;
    this.ink = leaf.ink();
    for (List<Shelf> shelves : plan.inHand().shelves().values()) {
      shelves.forEach(s -> lots.put(s.lot().id(), s.lot()));
    }
  }

  /** What is taken from one lot, and by whom. */
  private static final class FromLot {
    private long units;
    private final Map<String, Long> batches = new TreeMap<>(PickPages::byNumber);
  }

  private static int byNumber(String one, String other) {
    int byKind = Character.compare(one.charAt(0), other.charAt(0));
    return byKind != 0
        ? byKind
        : Integer.compare(Integer.parseInt(one.substring(1)), Integer.parseInt(other.substring(1)));
  }

  void draw() {
    Map<String, Map<Long, FromLot>> byMaterial = new TreeMap<>();
    Map<String, Long> needs = new TreeMap<>();
    for (MakePlan.Pick pick : plan.make().picks()) {
      needs.merge(pick.material(), pick.needUnits(), Long::sum);
      Map<Long, FromLot> from =
          byMaterial.computeIfAbsent(pick.material(), m -> new java.util.LinkedHashMap<>());
      for (MakePlan.Draw draw : pick.draws()) {
        FromLot lot = from.computeIfAbsent(draw.lot(), l -> new FromLot());
        lot.units += draw.units();
        lot.batches.merge(pick.batch(), draw.units(), Long::sum);
      }
    }
    if (needs.isEmpty()) {
      return;
    }
    leaf.chapter("Picking list", "first expired, first out");
    Map<String, Long> shortages = plan.make().shortages();
    byMaterial.forEach(
        (code, from) ->
            material(
                plan.book().materials().get(code),
                needs.getOrDefault(code, 0L),
                from,
                shortages.getOrDefault(code, 0L)));
  }

  private void material(Material material, long need, Map<Long, FromLot> from, long shortUnits) {
    leaf.need(8 + 6 * Math.min(2, from.size()));
    ink.fill(Leaf.LEFT, leaf.y() - 4.4, leaf.width(), 6.4, Ink.SLAB);
    ink.within(Leaf.LEFT + 2, leaf.y(), 110, material.name(), Pen.STRONG);
    ink.right(leaf.right() - 2, leaf.y(), Figures.amount(material.unit(), need), Pen.STRONG);
    leaf.down(7);
    from.forEach((lot, taken) -> lot(material, lot, taken));
    if (shortUnits > 0) {
      leaf.need(6);
      ink.tick(Leaf.LEFT + 2, leaf.y());
      ink.text(Leaf.LEFT + 8, leaf.y(), "short: no lot has it", Pen.WARM);
      ink.right(leaf.right() - 2, leaf.y(), Figures.amount(material.unit(), shortUnits), Pen.WARM);
      leaf.down(6);
    }
    leaf.down(1.5);
  }

  private void lot(Material material, long number, FromLot taken) {
    Lot lot = lots.get(number);
    String code = lot == null ? "" + number : lot.code();
    LocalDate expires = lot == null ? null : lot.expiresOn();
    leaf.need(10);
    ink.tick(Leaf.LEFT + 2, leaf.y());
    ink.within(Leaf.LEFT + 8, leaf.y(), 40, "lot " + code, Pen.BODY);
    ink.text(
        Leaf.LEFT + 52,
        leaf.y(),
        expires == null ? "keeps" : "until " + Figures.shortDay(expires) + " " + expires.getYear(),
        Pen.SMALL);
    ink.right(leaf.right() - 2, leaf.y(), Figures.amount(material.unit(), taken.units), Pen.BODY);
    StringBuilder batches = new StringBuilder();
    taken.batches.forEach(
        (batch, units) ->
            batches
                .append(batches.isEmpty() ? "" : "  \u00b7  ")
                .append(batch)
                .append(' ')
                .append(Figures.amount(material.unit(), units)));
    leaf.to(
        ink.wrapped(Leaf.LEFT + 8, leaf.y() + 3.8, leaf.width() - 40, batches.toString(), Pen.SMALL)
            + 1.6);
  }
}

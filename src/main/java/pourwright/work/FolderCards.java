package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.card.Finish;
import pourwright.card.ResolvedCandle;
import pourwright.card.ResolvedMix;
import pourwright.card.ResolvedPour;
import pourwright.card.Vessel;
import pourwright.card.WickPlan;
import pourwright.quantity.Counted;
import pourwright.quantity.Sourced;
import pourwright.work.ProofFolder.Section;

/** Mix card and pour card of a candle as they stand in its proof folder. */
final class FolderCards {
  private final ResolvedCandle candle;
  private final double loadOfTotal;

  FolderCards(CandleLabel label) {
    this.candle = label.candle();
    this.loadOfTotal = label.loadOfTotal();
  }

  List<Section> sections() {
    return List.of(mix(), pour());
  }

  private Section mix() {
    Vessel vessel = candle.vessel();
    ResolvedMix mix = candle.mix();
    ResolvedMix.Mixing one = mix.mixing(vessel.mixMl().value());
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("water", grams(one.waterG())));
    one.materials().byMaterial().forEach((code, g) -> rows.add(List.of(code, grams(g))));
    List<String> notes = new ArrayList<>();
    notes.add(
        "Mix card "
            + mix.card().name()
            + ": water to powder "
            + number(mix.mix().waterToPowder(), 3)
            + " by mass.");
    notes.add(
        "Vessel "
            + vessel.name()
            + ": "
            + number(vessel.outer().heightMm(), 1)
            + " mm high, cavity "
            + number(vessel.cavity().heightMm(), 1)
            + " mm deep, thinnest wall "
            + number(vessel.hollow().thinnestWall().mm(), 1)
            + " mm, base "
            + number(vessel.baseMm(), 1)
            + " mm, holds "
            + range(vessel.holdsMl(), "ml")
            + ".");
    notes.add(
        "Kept damp for "
            + number(mix.card().times().hardenH(), 0)
            + " h, then dried for "
            + number(mix.card().times().dryH(), 0)
            + " h or to constant mass.");
    notes.add("Finish " + candle.finish().name() + ": " + coats(candle.finish()) + ".");
    return new Section("Mix card, for one vessel", List.of("material", "amount"), rows, notes);
  }

  private static String coats(Finish finish) {
    if (finish.coats().isEmpty()) {
      return "no sealer";
    }
    List<String> coats = new ArrayList<>();
    finish
        .coats()
        .forEach(c -> coats.add(c.sealer() + " " + c.where().name().toLowerCase(Locale.ROOT)));
    return String.join(", ", coats) + ", full-dry after " + number(finish.fullDryH(), 0) + " h";
  }

  private Section pour() {
    ResolvedPour pour = candle.pour();
    Sourced net = candle.netG();
    ResolvedPour.Melt melt = pour.melt(net.value());
    List<List<String>> rows = new ArrayList<>();
    melt.materials().byMaterial().forEach((code, g) -> rows.add(List.of(code, grams(g))));
    List<String> notes = new ArrayList<>();
    notes.add(
        "Pour card "
            + pour.card().name()
            + ": fragrance load "
            + number(loadOfTotal * 100, 2)
            + " % of the total.");
    var t = pour.card().temperatures();
    notes.add(
        "Stir in at "
            + number(t.addFromC(), 0)
            + " to "
            + number(t.addToC(), 0)
            + " °C, pour at "
            + number(t.pourFromC(), 0)
            + " to "
            + number(t.pourToC(), 0)
            + " °C; rest "
            + Counted.of(Math.round(candle.restDays()), "day.", "days."));
    notes.add(
        "Net mass "
            + range(net, "g")
            + ", filled to "
            + number(candle.design().headspaceMm(), 1)
            + " mm under the rim.");
    WickPlan wicks = candle.design().wicks();
    notes.add(
        wicks.count()
            + " × wick "
            + wicks.wick()
            + (wicks.cutMm() > 0 ? ", cut to " + number(wicks.cutMm(), 0) + " mm" : "")
            + (wicks.tab() == null ? "" : ", tab " + wicks.tab())
            + ".");
    return new Section(
        "Pour card, for one candle with waste and residue",
        List.of("material", "amount"),
        rows,
        notes);
  }

  private static String range(Sourced value, String unit) {
    return number(value.value(), 0)
        + " "
        + unit
        + " ("
        + number(value.low(), 0)
        + " to "
        + number(value.high(), 0)
        + ", "
        + value.origin().words()
        + ")";
  }

  private static String grams(double g) {
    return number(g, 1) + " g";
  }

  private static String number(double value, int digits) {
    return String.format(Locale.ROOT, "%." + digits + "f", value);
  }
}

package pourwright.card;

import org.jspecify.annotations.Nullable;
import pourwright.material.Material;
import pourwright.material.MaterialBook;
import pourwright.material.Property;
import pourwright.pour.Fill;
import pourwright.quantity.Origin;
import pourwright.quantity.Sourced;
import pourwright.shape.Solid;

/**
 * A candle with every card and material looked up.
 *
 * @param design as it is written
 * @param vessel its vessel
 * @param mix what the vessel is cast from
 * @param finish how the vessel is finished
 * @param pour what is poured
 * @param materials where sealers, wicks and boxes are looked up
 */
public record ResolvedCandle(
    CandleDesign design,
    Vessel vessel,
    ResolvedMix mix,
    Finish finish,
    ResolvedPour pour,
    MaterialBook materials) {
  /** Thickness of a tab's sheet, in mm. From memory. */
  private static final double TAB_SHEET_MM = 0.3;

  /** Net mass of wax and fragrance in one candle, in g; a measured cavity scales the drawing. */
  public Sourced netG() {
    Solid cavity = vessel.cavity().solid();
    double drawn = Fill.of(cavity, design.headspaceMm(), pour.densities(), wickMl(), 0).netG();
    Sourced holds = vessel.holdsMl();
    return new Sourced(
        drawn * holds.value() / cavity.volumeMl(), holds.relativeUncertainty(), Origin.WORKED_OUT);
  }

  /** Volume of wicks and tabs in the wax, in ml; 0 where the wick's thickness is not known. */
  public double wickMl() {
    WickPlan wicks = design.wicks();
    double thick = diameterMm(wicks.wick());
    if (thick == 0) {
      return 0;
    }
    double disc = diameterMm(wicks.tab());
    double tabMl = Math.PI / 4 * disc * disc * TAB_SHEET_MM / 1000;
    double deep = Math.max(0, vessel.cavity().heightMm() - design.headspaceMm());
    return Fill.wickMl(wicks.count(), thick, deep, tabMl);
  }

  private double diameterMm(@Nullable String material) {
    return material == null
        ? 0
        : materials.get(material).property(Property.DIAMETER_MM).map(Sourced::value).orElse(0.0);
  }

  /** Rest before sale, in days: the design's own, else the pour card's. */
  public double restDays() {
    return design.restDays() == null ? pour.card().restDays() : design.restDays();
  }

  /** Sealer for one vessel, all coats, in ml by material. */
  public Amounts sealers() {
    return sealers(vessel, finish, materials);
  }

  /** Sealer for one vessel of a finish, all coats, in ml by material. */
  public static Amounts sealers(Vessel vessel, Finish finish, MaterialBook materials) {
    Amounts sum = Amounts.NONE;
    for (Finish.Coat coat : finish.coats()) {
      Material sealer = materials.get(coat.sealer());
      double area =
          switch (coat.where()) {
            case INSIDE -> vessel.insideM2();
            case OUTSIDE -> vessel.outsideM2();
            case BOTH -> vessel.insideM2() + vessel.outsideM2();
          };
      double coverage = sealer.required(Property.COVERAGE_M2_PER_L).value();
      sum = sum.plus(Amounts.of(sealer.code(), 1000 * area / coverage));
    }
    return sum;
  }

  /** Wicks, tabs and stickers for one candle, in pieces. */
  public Amounts wicking() {
    WickPlan wicks = design.wicks();
    Amounts sum = Amounts.of(wicks.wick(), wicks.count());
    if (wicks.tab() != null) {
      sum = sum.plus(Amounts.of(wicks.tab(), wicks.count()));
    }
    return wicks.sticker() == null ? sum : sum.plus(Amounts.of(wicks.sticker(), wicks.count()));
  }

  /** Boxes, labels and cards for so many candles. */
  public Amounts boxes(int candles) {
    int boxes = (candles + design.piecesPerBox() - 1) / design.piecesPerBox();
    Amounts sum = Amounts.NONE;
    for (CandleDesign.Packed packed : design.boxed()) {
      sum = sum.plus(Amounts.of(packed.material(), (double) boxes * packed.count()));
    }
    return sum;
  }
}

package pourwright.page.casting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.cast.Drying;
import pourwright.cast.Gypsum;
import pourwright.cast.MixHeat;
import pourwright.cast.MixVolumes;
import pourwright.cast.OwnHands;
import pourwright.cast.Paste;
import pourwright.cast.Paste.Abrams;
import pourwright.material.Property;
import pourwright.page.Desk;
import pourwright.page.board.Lengths;
import pourwright.quantity.Sourced;
import pourwright.work.CastSheet;

/** Figures beside a mix sheet: ratios, volumes, temperature, times, and what her own casts say. */
final class SheetFacts {
  private static final double HALF_HUMID = 0.5;
  private static final double BREEZE_KM_PER_H = 10;
  private static final double REACTED = 0.7;

  private final Desk desk;
  private final Lengths numbers;

  SheetFacts(Desk desk) {
    this.desk = desk;
    this.numbers = new Lengths(desk);
  }

  List<SheetPage.Fact> of(CastSheet sheet) {
    List<SheetPage.Fact> facts = new ArrayList<>();
    double byMass = 1 / sheet.mix().mix().waterToPowder();
    facts.add(
        new SheetPage.Fact(
            sheet.waterMostG() > sheet.amounts().waterG()
                ? "Powder to water by mass, driest"
                : "Powder to water by mass",
            numbers.number(byMass, 2) + " : 1",
            "water is " + numbers.number(1 / byMass, 3) + " of the powder"));
    Double byVolume = sheet.mix().mix().powderToWaterByVolume();
    Optional<Sourced> bulk = sheet.mix().powder().property(Property.BULK_DENSITY_G_PER_ML);
    facts.add(
        byVolume == null || bulk.isEmpty()
            ? new SheetPage.Fact(
                "Powder to water by volume",
                "not known",
                "weigh a level scoop of the powder five times")
            : new SheetPage.Fact(
                "Powder to water by volume",
                numbers.number(byVolume, 2) + " : 1",
                "with a bulk density of "
                    + numbers.number(bulk.get().value(), 2)
                    + " g/ml "
                    + Lengths.plusMinus(bulk.get().relativeUncertainty())
                    + ", "
                    + bulk.get().origin().words()));
    facts.add(
        new SheetPage.Fact(
            "Into the molds",
            numbers.millilitres(sheet.freshMl().value()),
            Lengths.plusMinus(sheet.freshMl().relativeUncertainty())
                + "; fresh density "
                + numbers.number(sheet.exact().freshGPerMl(), 2)
                + " g/ml; waste and residue come on top"));
    hands(sheet, facts);
    facts.add(
        new SheetPage.Fact(
            "Pot life today",
            numbers.number(sheet.potLifeMin(), 0) + " min",
            "at the room's temperature, with a usual activation energy; your own set times narrow"
                + " it"));
    facts.add(
        new SheetPage.Fact(
            "Demold from", numbers.number(sheet.demoldFromH(), 1) + " h", "after covering"));
    return facts;
  }

  /** Figures for whoever wants to know more: worked out, none of them a promise. */
  List<SheetPage.Fact> more(CastSheet sheet) {
    List<SheetPage.Fact> facts = new ArrayList<>();
    scoops(sheet, facts);
    physics(sheet, facts);
    water(sheet, facts);
    return facts;
  }

  private void scoops(CastSheet sheet, List<SheetPage.Fact> facts) {
    Double parts = sheet.driest().powderToWaterByVolume();
    Double share = sheet.driest().scoopsYield();
    if (parts != null && share != null) {
      facts.add(
          new SheetPage.Fact(
              "Scoops become",
              numbers.number(share * (parts + 1), 1),
              "of "
                  + numbers.number(parts, 1)
                  + " of powder and 1 of water: the water goes between the grains"));
    }
  }

  private void hands(CastSheet sheet, List<SheetPage.Fact> facts) {
    OwnHands hers = sheet.hands();
    Sourced density = hers.freshGPerMl();
    if (density != null) {
      facts.add(
          new SheetPage.Fact(
              "Your fresh density",
              numbers.number(density.value(), 2) + " g/ml",
              Lengths.plusMinus(density.relativeUncertainty())
                  + ", weighed in your own casts; the sheet uses it"));
    }
    Double share = hers.yieldFraction();
    if (share != null) {
      facts.add(
          new SheetPage.Fact(
              "Your yield",
              numbers.number(100 * share, 0) + " %",
              "of what you mix came into the molds; bucket and tools keep "
                  + numbers.grams(sheet.lostG(), 1)));
    }
    Double water = hers.waterToPowder();
    if (water != null && sheet.waterMostG() > sheet.amounts().waterG()) {
      facts.add(
          new SheetPage.Fact(
              "Water you really used",
              numbers.number(water, 3) + " of the powder",
              "mean of your own casts of this mix"));
    }
  }

  private void physics(CastSheet sheet, List<SheetPage.Fact> facts) {
    MixVolumes fill = MixVolumes.of(sheet.driest(), sheet.exact());
    facts.add(
        new SheetPage.Fact(
            "By absolute volume",
            numbers.millilitres(fill.totalMl()),
            "powder "
                + numbers.millilitres(fill.powderMl())
                + ", additions "
                + numbers.millilitres(fill.allAdditionsMl())
                + ", water "
                + numbers.millilitres(fill.waterMl())
                + ", air "
                + numbers.millilitres(fill.airMl())));
    double dry = sheet.exact().totalG() - sheet.exact().waterG();
    double celsius =
        MixHeat.mixC(dry, sheet.ask().roomC(), sheet.exact().waterG(), sheet.ask().waterC());
    facts.add(
        new SheetPage.Fact(
            "The mix begins at",
            desk.units().temperature(celsius, 0),
            "dry parts at the room's temperature; above 38 °C a cement may set in a flash"));
    Double cement = sheet.driest().powder().cementFraction();
    if (cement != null && cement == 0) {
      double ratio = sheet.driest().waterToPowder();
      facts.add(
          new SheetPage.Fact(
              "Dried plaster",
              numbers.number(Gypsum.dryGPerMl(ratio), 2) + " g/ml",
              numbers.number(100 * Gypsum.pores(ratio), 0)
                  + " % of it pores, which drink wax and oil"));
    }
    Double drier = sheet.driest().waterToCement();
    Double wetter = sheet.wettest().waterToCement();
    if (drier != null && wetter != null && wetter > drier * 1.001) {
      weaker(drier, wetter, facts);
    }
  }

  private void weaker(double drier, double wetter, List<SheetPage.Fact> facts) {
    double least = 1;
    double most = 0;
    for (Abrams form : Abrams.values()) {
      double lost = form.lost(drier, wetter);
      least = Math.min(least, lost);
      most = Math.max(most, lost);
    }
    facts.add(
        new SheetPage.Fact(
            "The wetter end is weaker by",
            numbers.number(100 * least, 0) + " to " + numbers.number(100 * most, 0) + " %",
            "Abrams' law in its three forms; portland only, a comparison and no strength"));
  }

  /** Where water goes: off a bare face, out of the wall again, through its pores. */
  private void water(CastSheet sheet, List<SheetPage.Fact> facts) {
    double room = sheet.ask().roomC();
    double face = Drying.freshFaceKgPerM2H(Math.max(0, room), Math.max(0, room), HALF_HUMID, 0);
    facts.add(
        new SheetPage.Fact(
            "A bare face loses",
            numbers.number(face, 2) + " kg/m²h",
            "in still air of 50 % humidity; in a wind of 10 km/h "
                + numbers.number(
                    Drying.freshFaceKgPerM2H(
                        Math.max(0, room), Math.max(0, room), HALF_HUMID, BREEZE_KM_PER_H),
                    2)
                + ", and above 0.5 it wants a cover (Uno)"));
    Double cement = sheet.driest().powder().cementFraction();
    Double ratio = sheet.driest().waterToCement();
    if (cement == null || ratio == null) {
      return;
    }
    double cementG = cement * sheet.exact().powderG();
    double leaves = Drying.evaporableG(sheet.exact().waterG(), cementG, REACTED);
    if (leaves > 0) {
      facts.add(
          new SheetPage.Fact(
              "Water that leaves again",
              numbers.grams(leaves, 1),
              "while it dries, if 70 % of a portland cement has reacted"));
    }
    double parted = Paste.hydrationForPartedPores(ratio);
    facts.add(
        new SheetPage.Fact(
            "Pores part at",
            parted > 1 ? "never" : numbers.number(100 * Math.max(0, parted), 0) + " % reacted",
            "of a portland cement; before that they stay joined and the wall leaks"));
  }
}

package pourwright.pour;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pourwright.pour.Blend.Extra;
import pourwright.pour.Blend.Fragrance;
import pourwright.pour.Blend.Wax;
import pourwright.pour.Dose.LoadOf;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.shape.Circle;
import pourwright.shape.Solid;

class PouringTest {
  private static final Fill.Densities WAX = new Fill.Densities(0.84, 0.90);

  /** By hand: a straight bore of 80 mm, 88 mm deep, filled to 76 mm: 382.0 ml, 343.8 g set. */
  @Test
  void theNetWeightIsTheSetVolumeAndTheHotLineIsHigher() {
    Fill fill = Fill.of(Solid.straight(new Circle(80), 88), 12, WAX, 0, 0.1);
    double setMl = Math.PI * 1.6 * 7.6 * 10;
    assertThat(fill.netG()).isCloseTo(setMl * 0.90, within(1e-6));
    assertThat(fill.setLineMm()).isEqualTo(76);
    assertThat(fill.hotLineMm()).isCloseTo(76 * 0.90 / 0.84, within(1e-6));
    assertThat(fill.topUpG()).isCloseTo(0.1 * fill.netG(), within(1e-9));
    assertThat(fill.firstHotLineMm()).isCloseTo(0.9 * 76 * 0.90 / 0.84, within(1e-6));
  }

  @Test
  void hotWaxAboveTheRimIsRefused() {
    Solid cavity = Solid.straight(new Circle(80), 88);
    assertThatThrownBy(() -> Fill.of(cavity, 2, WAX, 0, 0))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("above the rim");
  }

  @Test
  void wickAndTabTakeTheirPlaceInTheWax() {
    Solid cavity = Solid.straight(new Circle(80), 88);
    double wick = Fill.wickMl(2, 2.5, 76, 0.3);
    assertThat(wick).isCloseTo(2 * (Math.PI * 1.5625 * 76 / 1000 + 0.3), within(1e-9));
    double less = Fill.of(cavity, 12, WAX, 0, 0).netG() - Fill.of(cavity, 12, WAX, wick, 0).netG();
    assertThat(less).isCloseTo(wick * 0.90, within(1e-9));
  }

  private static Blend blend(double load) {
    return new Blend(
        List.of(new Wax("Soft plant wax A", 3, 0.10), new Wax("Coconut", 1, 0.06)),
        List.of(
            new Fragrance("Rain on slate", 2, 0.05, 93), new Fragrance("Cold hearth", 1, 1, 70)),
        List.of(new Extra("dye", 0.001)),
        load,
        LoadOf.TOTAL,
        0.20);
  }

  @Property
  void whatIsWeighedAddsUpToTheTotal(
      @ForAll @DoubleRange(min = 0.01, max = 0.3) double load,
      @ForAll @DoubleRange(min = 10, max = 9000) double totalG) {
    double sum = blend(load).weigh(totalG).stream().mapToDouble(Blend.Line::grams).sum();
    assertThat(sum).isCloseTo(totalG, within(1e-9 * totalG));
  }

  /** By hand: 0.05 for two parts of three binds at 0.075; the waxes hold 0.09 on average. */
  @Test
  void theLimitThatBindsIsNamed() {
    Blend.Limit binds = blend(0.08).limits().get(0);
    assertThat(binds.whose()).isEqualTo("the certificate of Rain on slate");
    assertThat(binds.maxLoadOfTotal()).isCloseTo(0.075, within(1e-12));
    assertThat(binds.exceeded()).isTrue();
    assertThat(blend(0.08).limits().get(1).maxLoadOfTotal()).isCloseTo(0.09, within(1e-12));
    assertThat(blend(0.07).warnings()).isEmpty();
    assertThat(blend(0.08).warnings()).hasSize(1);
    assertThat(blend(0.07).lowestFlashPointC()).isEqualTo(70);
  }

  @Test
  void residueIsAddedAfterTheWaste() {
    assertThat(PitcherPlan.meltG(1000, 0.03, 5)).isCloseTo(1035, within(1e-9));
  }

  @Test
  void roundingToTheScaleKeepsTheLoadOrSaysFromWhereItDoes() {
    Dose dose = Dose.ofTotal(612.7, 0.08, LoadOf.TOTAL);
    PitcherPlan.Rounded fine = PitcherPlan.toScale(dose, 1, 0.02);
    assertThat(fine.withinTolerance()).isTrue();
    assertThat(fine.dose().fragranceG()).isEqualTo(49);
    PitcherPlan.Rounded small = PitcherPlan.toScale(Dose.ofTotal(40, 0.08, LoadOf.TOTAL), 1, 0.02);
    assertThat(small.withinTolerance()).isFalse();
    assertThat(small.leastTotalG()).isCloseTo(312.5, within(1e-9));
  }

  @Property
  void fromTheLeastTotalOnTheScaleKeepsTheTolerance(
      @ForAll @DoubleRange(min = 0.02, max = 0.15) double load,
      @ForAll @DoubleRange(min = 1.05, max = 9) double times) {
    double least =
        PitcherPlan.toScale(Dose.ofTotal(100, load, LoadOf.TOTAL), 0.1, 0.02).leastTotalG();
    Dose dose = Dose.ofTotal(least * times, load, LoadOf.TOTAL);
    assertThat(PitcherPlan.toScale(dose, 0.1, 0.02).loadError()).isLessThan(0.02);
  }

  /** By hand, with the typical dropper: 4.8 g at 0.96 g/ml are 5 ml and 100 drops. */
  @Test
  void dropsAndMillilitresCarryTheRangeOfDensityAndDropper() {
    Sourced density = Sourced.typical(0.96, 0.04);
    assertThat(PitcherPlan.millilitres(4.8, density).value()).isCloseTo(5, within(1e-12));
    Sourced drops = PitcherPlan.drops(4.8, density, PitcherPlan.DROP_ML);
    assertThat(drops.value()).isCloseTo(100, within(1e-9));
    assertThat(drops.relativeUncertainty()).isCloseTo(Math.hypot(0.04, 0.25), within(1e-12));
  }

  @Test
  void oneMeltIsSplitOverScents() {
    List<PitcherPlan.Share> shares =
        PitcherPlan.split(List.of("Fig loft", "plain"), List.of(500.0, 300.0), List.of(0.08, 0.0));
    assertThat(shares.get(0).dose().waxG() + shares.get(1).dose().waxG())
        .isCloseTo(760, within(1e-9));
  }

  /** House rule: 30 K while heating, 10 K while adding. */
  @Test
  void theFlashPointRuleHasThreeSteps() {
    assertThat(FlashRule.heating(75, 110).says()).isEqualTo(FlashRule.Says.FINE);
    assertThat(FlashRule.heating(85, 110).says()).isEqualTo(FlashRule.Says.TOO_HOT);
    assertThat(FlashRule.adding(71, 93).says()).isEqualTo(FlashRule.Says.FINE);
    assertThat(FlashRule.adding(71, 75).says()).isEqualTo(FlashRule.Says.CARE);
    assertThat(FlashRule.adding(71, 65).says()).isEqualTo(FlashRule.Says.REASON_NEEDED);
  }

  /** By hand: 200 g of wax (2200) at 60 °C and 500 g of stone (880) at 20 °C meet at 40 °C. */
  @Test
  void aColdVesselTakesAsMuchHeatAsTheWaxBrings() {
    VesselWarming warming = new VesselWarming(200, 2200, 500, 880);
    assertThat(warming.afterC(60, 20)).isCloseTo(40, within(1e-12));
    assertThat(warming.afterC(60, warming.vesselForC(60, 48))).isCloseTo(48, within(1e-12));
    assertThat(requireNonNull(warming.warning(60, 20, 45))).contains("Warm the vessel");
    assertThat(warming.warning(60, 38, 45)).isNull();
  }

  /** Common practice, no source: 10 to 14 days for plant wax, 30 to 40 mm of wick for the bar. */
  @Test
  void restAndWickLengthAreTheHouses() {
    assertThat(Rest.PLANT.restedAt(Instant.parse("2026-11-01T10:00:00Z")))
        .isEqualTo("2026-11-15T10:00:00Z");
    assertThat(Rest.cutMm(80, Rest.FOR_THE_BAR_MM)).isEqualTo(115);
  }
}

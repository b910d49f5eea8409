package pourwright.cast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pourwright.cast.Addition.Kind;
import pourwright.cast.Ratio.By;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Water;

class MixTest {
  private static final Powder CEMENT = Powder.of(3.15, 1.2);

  private static Mix mortar(double waterToCement, double sand, double pigment, double air) {
    return Mix.plain(CEMENT, new Ratio(By.MASS, 1, waterToCement))
        .withAir(air)
        .with(
            List.of(new Addition(Kind.SAND, sand, 2.65), new Addition(Kind.PIGMENT, pigment, 5.0)));
  }

  /** Check values 4 and 5, from ACI 211.1's absolute volumes. */
  @Test
  void aQuarterLitreOfPigmentedMortar() {
    Mix mix = mortar(0.45, 1.5, 0.03, 0.03);
    MixAmounts amounts = mix.amounts(250, 0, 0);
    assertThat(amounts.powderG()).isCloseTo(180.93, within(0.01));
    assertThat(amounts.of(mix, Kind.SAND)).isCloseTo(271.39, within(0.01));
    assertThat(amounts.waterG()).isCloseTo(81.42, within(0.01));
    assertThat(amounts.of(mix, Kind.PIGMENT)).isCloseTo(5.43, within(0.01));
    assertThat(amounts.totalG()).isCloseTo(539.17, within(0.01));
    assertThat(amounts.freshGPerMl()).isCloseTo(2.1567, within(5e-5));
    MixAmounts more = mix.amounts(250, 0.10, 0);
    assertThat(more.powderG()).isCloseTo(199.02, within(0.01));
    assertThat(more.of(mix, Kind.PIGMENT)).isCloseTo(5.97, within(0.01));
    double airFree = mix.withAir(0).amounts(250, 0, 0).freshGPerMl();
    assertThat(airFree).isCloseTo(2.22337, within(5e-6));
    assertThat(FreshDensity.airFraction(2.10, airFree)).isCloseTo(0.0555, within(2e-5));
  }

  /** US Navy Engineering Aid 14070/14071, chapter 17; check values 1 to 3. US units. */
  @Test
  void theNavysCubicYard() {
    double poundPerFt3 = 453.59237 / 28316.846592;
    double g = 62.4 * poundPerFt3;
    Mix mix =
        new Mix(
            Powder.of(3.15 * g, null),
            new Ratio(By.MASS, 2, 1),
            List.of(
                new Addition(Kind.SAND, 1735.0 / 610, 2.60 * g),
                new Addition(Kind.SAND, 1151.7 / 610, 2.65 * g)),
            null,
            0.05,
            10);
    MixAmounts amounts = mix.amounts(27 * 28316.846592, 0, 0);
    assertThat(amounts.powderG() / 453.59237).isCloseTo(610, within(0.5));
    assertThat(amounts.additionsG().get(1) / 453.59237).isCloseTo(1152, within(1.0));
    assertThat(amounts.waterG() / 453.59237).isCloseTo(305, within(0.5));
    MixVolumes volumes = MixVolumes.of(mix, amounts);
    double ft3 = 28316.846592;
    assertThat(volumes.powderMl() / ft3).isCloseTo(3.10, within(0.01));
    assertThat(volumes.waterMl() / ft3).isCloseTo(4.89, within(0.01));
    assertThat(volumes.additionsMl().get(0) / ft3).isCloseTo(10.69, within(0.01));
    assertThat(volumes.additionsMl().get(1) / ft3).isCloseTo(6.97, within(0.01));
    assertThat(volumes.airMl() / ft3).isCloseTo(1.35, within(0.005));
    assertThat(mix.powder().grainsMl(94 * 453.59237) / ft3).isCloseTo(0.478, within(0.001));
  }

  /** Check value 6, with water of 1 g/ml taken at 4 °C. */
  @Test
  void aPasteOfOneHalf() {
    Mix paste = new Mix(Powder.of(3.15, null), new Ratio(By.MASS, 2, 1), List.of(), null, 0, 4);
    MixAmounts amounts = paste.amounts(1000, 0, 0);
    assertThat(amounts.freshGPerMl() * 1000).isCloseTo(1834.95, within(0.1));
    assertThat(amounts.powderG()).isCloseTo(1223.3, within(0.1));
  }

  /** Check value 7 and the table of section 1.5; w/p = ρw/(n·ρb). */
  @Test
  void threeToOneByVolumeIsNotThreeToOneByMass() {
    Mix byVolume = Mix.plain(CEMENT, new Ratio(By.VOLUME, 3, 1));
    Mix byMass = Mix.plain(CEMENT, new Ratio(By.MASS, 3, 1));
    assertThat(byVolume.waterToPowder()).isCloseTo(0.2773, within(5e-5));
    assertThat(byMass.waterToPowder()).isCloseTo(1 / 3.0, within(1e-12));
    assertThat(byVolume.powderToWaterByVolume()).isCloseTo(3, within(1e-12));
    assertThat(byMass.powderToWaterByVolume()).isCloseTo(2.4955, within(5e-5));
    assertThat(new Ratio(By.VOLUME, 4, 1).waterToPowder(Powder.of(3.15, 1.0), 0.9982))
        .isCloseTo(0.2496, within(5e-5));
  }

  /** Check value 8: volumes of powder and water do not add. */
  @Test
  void threeCupsOfPowderAndOneOfWaterYieldLessThanFourCups() {
    Mix mix = Mix.plain(Powder.of(2.75, 1.2), new Ratio(By.VOLUME, 3, 1)).withAir(0.03);
    MixAmounts amounts = mix.amounts(238.05, 0, 0);
    assertThat(amounts.powderG()).isCloseTo(360, within(0.05));
    assertThat(amounts.waterG()).isCloseTo(99.82, within(0.05));
    assertThat(amounts.freshGPerMl()).isCloseTo(1.9316, within(5e-5));
    assertThat(mix.scoopsYield()).isCloseTo(0.595, within(5e-4));
  }

  /** The batch test of section 8.1: a cup of 249.097 ml. */
  @Test
  void aCupOfMortar() {
    Mix mix =
        Mix.plain(CEMENT, new Ratio(By.MASS, 1, 0.40))
            .withAir(0.03)
            .with(List.of(new Addition(Kind.SAND, 1, 2.65)));
    MixAmounts amounts = mix.amounts(249.097, 0, 0);
    assertThat(amounts.powderG()).isCloseTo(220.55, within(0.01));
    assertThat(amounts.waterG()).isCloseTo(88.22, within(0.01));
    assertThat(amounts.totalG()).isCloseTo(529.33, within(0.01));
    assertThat(amounts.freshGPerMl()).isCloseTo(2.1250, within(5e-5));
  }

  /** Check value 32: latex of 47 % solids, 15 % polymer on the cement, w/c 0.35. */
  @Test
  void theWaterOfALatexCounts() {
    LiquidColour latex = LiquidColour.forPolymer(500, 0.15, 0.47, 1.02);
    assertThat(latex.massG()).isCloseTo(159.57, within(0.005));
    assertThat(latex.waterG()).isCloseTo(84.57, within(0.005));
    Mix mix = new Mix(CEMENT, new Ratio(By.MASS, 1, 0.35), List.of(), latex, 0, 20);
    double volume = 500 / 3.15 + 90.43 / Water.gramsPerMl(20) + latex.volumeMl();
    MixAmounts amounts = mix.amounts(volume, 0, 0);
    assertThat(amounts.powderG()).isCloseTo(500, within(0.02));
    assertThat(amounts.waterG()).isCloseTo(90.43, within(0.02));
  }

  /** Check value 33: 20 g of paint at 45 % solids in 300 g of cement, w/c 0.40: 109 g, not 120. */
  @Test
  void theWaterOfAPaintCounts() {
    LiquidColour paint = new LiquidColour(20, 0.45, 1.2);
    Mix mix = new Mix(CEMENT, new Ratio(By.MASS, 1, 0.40), List.of(), paint, 0, 20);
    double volume = 300 / 3.15 + 109 / Water.gramsPerMl(20) + paint.volumeMl();
    assertThat(mix.amounts(volume, 0, 0).waterG()).isCloseTo(109, within(1e-6));
  }

  /** Check value 10. */
  @Test
  void aPremixHasMoreWaterToItsCementThanToItsPowder() {
    Powder premix = new Powder(2.78, 1.5, 0.30, null, null);
    Mix mix = Mix.plain(premix, new Ratio(By.MASS, 5, 1));
    assertThat(mix.waterToCement()).isCloseTo(0.667, within(0.001));
  }

  /** Check value 31 and ASTM C979's limit of 10 % of the cement. */
  @Test
  void tenPercentOfAPremixIsAThirdOfItsCementAndExceedsTheLimit() {
    assertThat(MixLimits.pigmentMostG(180.93)).isCloseTo(18.09, within(0.01));
    Powder premix = new Powder(2.78, 1.5, 0.30, null, null);
    Mix mix =
        Mix.plain(premix, new Ratio(By.MASS, 6, 1))
            .with(List.of(new Addition(Kind.PIGMENT, 0.10, 5)));
    assertThat(MixLimits.warnings(mix, mix.amounts(100, 0, 0)))
        .anyMatch(w -> w.contains("33.3 % of the cement"));
  }

  @Test
  void pigmentInAPowderOfUnknownCementIsNeverPassedInSilence() {
    Mix mix =
        Mix.plain(CEMENT, new Ratio(By.MASS, 2, 1))
            .with(List.of(new Addition(Kind.PIGMENT, 0.01, 5)));
    assertThat(MixLimits.warnings(mix, mix.amounts(100, 0, 0)))
        .anyMatch(w -> w.contains("not known"));
  }

  @Test
  void aDryMixForAPaintThatBringsItsOwnWaterIsRefused() {
    LiquidColour paint = new LiquidColour(200, 0.4, 1.2);
    Mix mix = new Mix(CEMENT, new Ratio(By.MASS, 4, 1), List.of(), paint, 0, 20);
    assertThatThrownBy(() -> mix.amounts(250, 0, 0)).isInstanceOf(OutOfRange.class);
  }

  @Property
  void volumesAndAirFillTheMold(
      @ForAll @DoubleRange(min = 1, max = 5000) double volume,
      @ForAll @DoubleRange(min = 0.15, max = 0.9) double waterToPowder,
      @ForAll @DoubleRange(min = 0, max = 3) double sand,
      @ForAll @DoubleRange(min = 0, max = 0.1) double pigment,
      @ForAll @DoubleRange(min = 0, max = 0.2) double air,
      @ForAll @DoubleRange(min = 0, max = 0.5) double waste,
      @ForAll @DoubleRange(min = 0, max = 50) double residue) {
    double paintG = 0.02 * volume;
    LiquidColour paint = new LiquidColour(paintG, 0.5, 1.1);
    Mix mix =
        new Mix(
            CEMENT,
            new Ratio(By.MASS, 1, waterToPowder),
            List.of(new Addition(Kind.SAND, sand, 2.65), new Addition(Kind.PIGMENT, pigment, 5)),
            paint,
            air,
            20);
    MixAmounts a = mix.amounts(volume, waste, residue);
    assertThat(MixVolumes.of(mix, a).totalMl())
        .isCloseTo(a.volumeMl(), within(1e-9 * a.volumeMl()));
    double filled =
        a.powderG() / 3.15
            + a.of(mix, Kind.SAND) / 2.65
            + a.of(mix, Kind.PIGMENT) / 5
            + a.waterG() / Water.gramsPerMl(20)
            + a.liquidG() / 1.1
            + air * a.volumeMl();
    assertThat(filled).isCloseTo(a.volumeMl(), within(1e-9 * a.volumeMl()));
    MixAmounts bare = mix.amounts(volume, 0, 0);
    assertThat(a.totalG())
        .isCloseTo(bare.totalG() * (1 + waste) + residue, within(1e-9 * a.totalG()));
    assertThat((a.waterG() + a.liquidG() * 0.5) / a.powderG())
        .isCloseTo(waterToPowder, within(1e-9));
  }

  @Property
  void changingTheVolumeScalesEveryPart(
      @ForAll @DoubleRange(min = 1, max = 5000) double volume,
      @ForAll @DoubleRange(min = 0.1, max = 10) double factor) {
    Mix mix = mortar(0.4, 1.2, 0.02, 0.02);
    MixAmounts once = mix.amounts(volume, 0.1, 0);
    MixAmounts scaled = mix.amounts(volume * factor, 0.1, 0);
    assertThat(scaled.powderG()).isCloseTo(once.powderG() * factor, within(1e-9 * scaled.totalG()));
    assertThat(scaled.waterG()).isCloseTo(once.waterG() * factor, within(1e-9 * scaled.totalG()));
    assertThat(scaled.totalG()).isCloseTo(once.totalG() * factor, within(1e-9 * scaled.totalG()));
  }

  @Property
  void moreWaterMakesALighterMix(@ForAll @DoubleRange(min = 0.2, max = 0.8) double waterToPowder) {
    double wet = mortar(waterToPowder + 0.05, 1, 0, 0).amounts(100, 0, 0).freshGPerMl();
    assertThat(wet).isLessThan(mortar(waterToPowder, 1, 0, 0).amounts(100, 0, 0).freshGPerMl());
  }

  @Test
  void roundingToTheScaleFindsAmountsThatKeepTheRatio() {
    MixAmounts rounded = mortar(0.45, 1.5, 0.03, 0.03).amounts(250, 0.1, 0).roundedTo(1);
    assertThat(rounded.powderG()).isEqualTo(200);
    assertThat(rounded.additionsG()).containsExactly(300.0, 6.0);
    assertThat(rounded.waterG()).isEqualTo(90);
  }

  @Property
  void roundingNeverMixesTooLittleNorMoreThanThreeInAHundredTooMuch(
      @ForAll @DoubleRange(min = 60, max = 5000) double volume,
      @ForAll @DoubleRange(min = 0.2, max = 0.6) double waterToPowder) {
    MixAmounts exact = mortar(waterToPowder, 1.2, 0.03, 0.02).amounts(volume, 0.1, 0);
    MixAmounts rounded = exact.roundedTo(0.1);
    assertThat(rounded.powderG()).isBetween(exact.powderG() - 1e-6, exact.powderG() * 1.03 + 0.1);
    double ratio = rounded.waterG() / rounded.powderG();
    assertThat(ratio).isCloseTo(waterToPowder, within(0.06 / exact.powderG() + 1e-9));
  }
}

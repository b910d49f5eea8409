package pourwright.cast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.cast.Absorption.Gain;
import pourwright.cast.HeatStress.Wall;
import pourwright.cast.Paste.Abrams;
import pourwright.quantity.FirstOrder;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.shape.Circle;
import pourwright.shape.Hollow;
import pourwright.shape.Solid;

/**
 * The numbered check values of the workshop's handbook on casting that other tests of this room do
 * not hold, each with its source. Where a source says 'arithmetic', the value tests the sum and not
 * nature.
 */
class CheckValuesTest {

  /** 9: GUM 5.1.2, first order; 10 %, 5 % and 3 % in a product and quotient. */
  @Test
  void threeUncertaintiesOfAScoopedRatio() {
    FirstOrder.Result result =
        FirstOrder.of(
            List.of(
                Sourced.measured(1.2, 0.10), Sourced.measured(3, 0.05), Sourced.measured(1, 0.03)),
            x -> x[2] / (x[0] * x[1]));
    assertThat(result.value().relativeUncertainty()).isCloseTo(0.1158, within(0.001));
    assertThat(result.widestInput()).isZero();
  }

  /** 11: Abrams (1918) in the form 96.5/4^(1.5·w/c); 12: 96/7^(w/c), encyclopedia. Ratios only. */
  @Test
  void moreWaterCostsStrength() {
    assertThat(Abrams.OF_TEXTBOOK.curveMPa(0.5)).isCloseTo(34.12, within(0.02));
    assertThat(Abrams.OF_ENCYCLOPEDIA.curveMPa(0.5)).isCloseTo(36.28, within(0.02));
    assertThat(Abrams.OF_1918.curveMPa(0.5)).isCloseTo(22.30, within(0.02));
    assertThat(Abrams.OF_TEXTBOOK.lost(0.5, 0.6)).isCloseTo(0.188, within(0.0005));
    assertThat(Abrams.OF_ENCYCLOPEDIA.lost(0.5, 0.6)).isCloseTo(0.177, within(0.0005));
    assertThat(Abrams.OF_1918.lost(0.5, 0.6)).isCloseTo(0.254, within(0.0005));
  }

  /** 13: Feret (1892), K 200 MPa from memory. */
  @Test
  void feret() {
    assertThat(Paste.feretMPa(200, 0.5, 3.15, 0.02)).isCloseTo(28.97, within(0.02));
    assertThat(Paste.feretMPa(200, 0.4, 3.15, 0.02)).isCloseTo(37.61, within(0.02));
  }

  /** 14: NIST, Garboczi and Bentz: 0.21 at w/c 0.40 and 70 % hydration; 19: parted pores. */
  @Test
  void poresPartWithHydration() {
    assertThat(Paste.poresOfPaste(0.40, 0.70)).isCloseTo(0.2056, within(0.0001));
    assertThat(Paste.hydrationForPartedPores(0.40)).isCloseTo(0.7511, within(0.0001));
    assertThat(Paste.hydrationForPartedPores(0.51)).isGreaterThan(1);
  }

  /** 15: Powers, 234·x³; 16: an exercise restating it; 18: the textbook's 240·x³. */
  @Test
  void gelToSpace() {
    double x = Paste.gelToSpace(0.50, 0.70);
    assertThat(x).isCloseTo(0.6575, within(0.0001));
    assertThat(Paste.gelMPa(234, x)).isCloseTo(66.5, within(0.05));
    assertThat(Paste.gelToSpace(0.6083, 0.8564)).isCloseTo(0.66, within(0.001));
    assertThat(Paste.poresMlPerG(0.6083, 0.8564)).isCloseTo(0.30, within(0.001));
    assertThat(Paste.gelMPa(240, 0.59)).isCloseTo(49.29, within(0.01));
  }

  /** 17: textbook variant with 0.657 and 0.319 at full hydration; ours differs by its constants. */
  @Test
  void gelToSpaceAtFullHydration() {
    assertThat(Paste.Gel.OF_TEXTBOOK.toSpace(390 / 600.0, 1)).isCloseTo(0.678, within(0.002));
    assertThat(Paste.gelToSpace(0.65, 1)).isCloseTo(0.701, within(0.001));
  }

  /** 27: US Army TM 5-852-4, equation 16, and the further values of section 3.3. */
  @Test
  void coldWaterCoolsTheMix() {
    assertThat(MixHeat.mixC(1000, 22, 200, 5)).isCloseTo(13.90, within(0.005));
    assertThat(MixHeat.mixC(1000, 22, 200, 40)).isCloseTo(30.57, within(0.005));
    assertThat(MixHeat.mixC(1000, 22, 500, 5)).isCloseTo(10.19, within(0.005));
    assertThat(MixHeat.waterCFor(13.904762, 1000, 22, 200)).isCloseTo(5, within(1e-5));
  }

  /** 29: ASTM C1074 annex, from memory. */
  @Test
  void strengthGrowsAlongAHyperbola() {
    assertThat(40 * Paste.hyperbola(0.25, 0.3, 7)).isCloseTo(25.05, within(0.01));
  }

  /** 28: ASTM C928, table 1, and NIST SP 811; 3000 psi is 20.68 MPa, not the 27.58 of 4000. */
  @Test
  void classesOfRapidMixes() {
    assertThat(RapidClass.R3.threeHoursMPa()).isEqualTo(21);
    assertThat(RapidClass.ofPsi(3000)).isCloseTo(20.68, within(0.005));
    assertThat(RapidClass.ofPsi(4000)).isCloseTo(27.58, within(0.005));
    assertThat(RapidClass.values())
        .allSatisfy(c -> assertThat(c.sevenDaysMPa()).isGreaterThanOrEqualTo(c.oneDayMPa()));
  }

  /** 30: EN 1992-1-1, 3.1.2, from memory. */
  @Test
  void strengthOverThatAt28Days() {
    assertThat(Paste.european(0.25, 7)).isCloseTo(0.779, within(0.0005));
    assertThat(Paste.european(0.25, 1)).isCloseTo(0.342, within(0.0005));
    assertThat(Paste.european(0.20, 3)).isCloseTo(0.663, within(0.0005));
    assertThat(Paste.european(0.20, 28)).isEqualTo(1);
  }

  /** 44: Washburn (1921) as restated by NIST, Garboczi and Bentz; water, 1 µm, a minute. */
  @Test
  void aTubeOfAMicrometreDrawsWaterInQuickly() {
    assertThat(Absorption.drawnInMm(0.0728, 0.001002, 1, 60)).isCloseTo(46.7, within(0.05));
    double wax = Absorption.drawnInMm(0.027, 0.004, 1, 60);
    assertThat(wax / Absorption.drawnInMm(0.0728, 0.001002, 1, 60))
        .isCloseTo(Absorption.liquidToWater(0.027, 0.004), within(1e-12));
  }

  /**
   * 34 and 35: Uno (1998), and Menzel's older formula; ACI 305's chart reads 0.25 lb/ft²h for 87/80
   * °F, 50 %, 12 mph.
   */
  @Test
  void windDriesAFreshFace() {
    assertThat(Drying.freshFaceKgPerM2H(27, 25, 0.5, 10)).isCloseTo(0.5265, within(0.0005));
    assertThat(Drying.freshFaceKgPerM2H(25, 25, 0.5, 0)).isCloseTo(0.1212, within(0.0005));
    double chart = Drying.freshFaceKgPerM2H((87 - 32) / 1.8, (80 - 32) / 1.8, 0.5, 12 * 1.609344);
    assertThat(Drying.lbPerFt2H(chart)).isCloseTo(0.233, within(0.0005));
    assertThat(Drying.freshFaceLbPerFt2H(87, 80, 0.5, 12)).isCloseTo(0.243, within(0.0005));
  }

  /** 36: Powers and Brownyard as in Neville, from memory. */
  @Test
  void aDryCastingHasLostATenthOfItsWeight() {
    double leaves = Drying.evaporableG(225, 500, 0.7);
    assertThat(leaves).isCloseTo(144.5, within(0.05));
    assertThat(leaves / (500 + 750 + 225 - leaves)).isCloseTo(0.1086, within(0.0001));
  }

  /** 37: Fick, slab, U = 0.9; arithmetic, the diffusivity is from memory. */
  @Test
  void aThickerWallDriesWithTheSquareOfItsThickness() {
    assertThat(Drying.daysTo90Percent(8, 1e-10)).isCloseTo(1.57, within(0.005));
    assertThat(Drying.daysTo90Percent(12, 1e-10) / Drying.daysTo90Percent(8, 1e-10))
        .isCloseTo(2.25, within(1e-9));
  }

  /** House criterion after ASTM C642's successive weighings. */
  @Test
  void aCastingIsDryWhenItLosesLessThanAThousandthInADay() {
    assertThat(Drying.isDry(500.4, 500, 24)).isTrue();
    assertThat(Drying.isDry(500.6, 500, 24)).isFalse();
    assertThat(Drying.isDry(500.4, 500, 12)).isFalse();
    assertThatThrownBy(() -> Drying.isDry(500.1, 500, 2)).isInstanceOf(OutOfRange.class);
  }

  /** 38: the example of ASTM C642's appendix, from memory. */
  @Test
  void fourWeighingsTellTheVoids() {
    Absorption.Soaking soaking = Absorption.soaking(1000, 1090, 1100, 500);
    assertThat(soaking.soaked()).isCloseTo(0.090, within(1e-9));
    assertThat(soaking.boiled()).isCloseTo(0.100, within(1e-9));
    assertThat(soaking.dryGPerMl()).isCloseTo(1.667, within(0.0005));
    assertThat(soaking.grainGPerMl()).isCloseTo(2.000, within(1e-9));
    assertThat(soaking.voids()).isCloseTo(0.1667, within(0.0001));
    assertThatThrownBy(() -> Absorption.soaking(1000, 900, 1100, 500))
        .isInstanceOf(OutOfRange.class);
  }

  /** 39 and 40: the form of ASTM C1585. */
  @Test
  void waterRisesWithTheRootOfTime() {
    double face = Math.PI / 4 * 100 * 100;
    assertThat(Absorption.depthMm(5, face)).isCloseTo(0.6366, within(0.00005));
    Absorption.Sorptivity slope =
        Absorption.sorptivity(
            List.of(new Gain(0, 0), new Gain(5400, 2.5), new Gain(21600, 5)), face);
    assertThat(slope.mmPerRootS()).isCloseTo(0.004332, within(1e-6));
    assertThat(slope.correlation()).isCloseTo(1, within(1e-9));
    assertThat(Absorption.ofRootMinutes(0.1)).isCloseTo(0.01291, within(1e-5));
    assertThat(new Absorption.Sorptivity(0.01291, 1).mmPerRootMin()).isCloseTo(0.1, within(1e-4));
  }

  /** 41 to 43: Washburn scaling after Hall and Hoff; wax 0.027 N/m and 4 mPa·s from memory. */
  @Test
  void hotWaxPassesPlasterInMinutesAndDenseMortarInADay() {
    double factor = Absorption.liquidToWater(0.027, 0.004);
    assertThat(factor).isCloseTo(0.3048, within(0.0003));
    double plaster = factor * Absorption.ofRootMinutes(3.5);
    assertThat(Absorption.secondsThrough(8, 0.45, plaster) / 60).isCloseTo(11.4, within(0.05));
    double dense = factor * Absorption.ofRootMinutes(0.1);
    assertThat(Absorption.secondsThrough(8, 0.15, dense) / 3600).isCloseTo(25.8, within(0.1));
  }

  /** 45: NIST SP 811; 46: arithmetic on a cylinder of 74 × 90 mm. */
  @Test
  void sealerForACup() {
    assertThat(SealCoat.m2PerL(150)).isCloseTo(3.681, within(0.0005));
    Hollow cup =
        new Hollow(Solid.straight(new Circle(90), 100), Solid.straight(new Circle(74), 90));
    assertThat(SealCoat.millilitres(cup.insideMm2(90), 2, 5)).isCloseTo(10.09, within(0.005));
  }

  /** 47 and 48: textbook form, Callister; typical mortar. */
  @Test
  void aSuddenDifferenceStressesTwiceAsMuchAsASteadyOne() {
    assertThat(Wall.MORTAR.suddenMPa(20)).isCloseTo(6.25, within(1e-9));
    assertThat(Wall.MORTAR.steadyMPa(20)).isCloseTo(3.125, within(1e-9));
    assertThat(Wall.MORTAR.suddenLimitK(2.5)).isCloseTo(8, within(1e-9));
    assertThat(Wall.MORTAR.steadyLimitK(2.5)).isCloseTo(16, within(1e-9));
  }

  /** 49: Timoshenko's thick cylinder, from memory. */
  @Test
  void aRoundWallIsPulledOutsideAndPressedInside() {
    assertThat(Wall.MORTAR.roundOuterMPa(37, 45, 20)).isCloseTo(2.92, within(0.01));
    assertThat(Wall.MORTAR.roundInnerMPa(37, 45, 20)).isCloseTo(-3.33, within(0.01));
  }

  /** 50: Wagner and Pruss (2002). 51: steam tables, 1.673 m³/kg at 100 °C. */
  @Test
  void wetWallsMakeSteam() {
    assertThat(HeatStress.steamKPa(120)).isCloseTo(198.67, within(0.05));
    assertThat(HeatStress.steamKPa(100)).isCloseTo(101.4, within(0.05));
    assertThat(HeatStress.steamKPa(20)).isCloseTo(2.34, within(0.005));
    assertThat(HeatStress.steamLitresPerGram(100)).isCloseTo(1.673, within(0.002));
    assertThat(HeatStress.steamLitresPerGram(120)).isCloseTo(0.8913, within(0.001));
    assertThat(HeatStress.steamLitresPerGram(100) / 0.0010435).isCloseTo(1603, within(3.0));
  }

  /** 52: EN 1992-1-2, lower curve, from memory. */
  @Test
  void conductivityFallsALittleWithHeat() {
    assertThat(HeatStress.conductivityLow(60)).isCloseTo(1.280, within(0.001));
    assertThat(HeatStress.conductivityLow(20)).isCloseTo(1.333, within(0.001));
  }

  /** 62: ISO 6344 and CAMI, the whole table of the two scales. */
  @ParameterizedTest
  @CsvSource({
    "P, 60, 269", "P, 80, 201", "P, 100, 162", "P, 120, 125", "P, 150, 100", "P, 180, 82",
    "P, 220, 68", "P, 240, 58.5", "P, 320, 46.2", "P, 400, 35", "P, 600, 25.8", "P, 800, 21.8",
    "CAMI, 80, 190", "CAMI, 120, 115", "CAMI, 220, 68", "CAMI, 320, 36", "CAMI, 400, 23"
  })
  void sizesOfGrit(Grit.Scale scale, int number, double micrometres) {
    assertThat(new Grit(scale, number).micrometres()).isEqualTo(micrometres);
  }

  /** 62: the same two scales at 400. */
  @Test
  void gritP400IsNotGrit400() {
    assertThat(new Grit(Grit.Scale.P, 400).micrometres()).isEqualTo(35);
    assertThat(new Grit(Grit.Scale.CAMI, 400).micrometres()).isEqualTo(23);
    List<Grit> jump = List.of(new Grit(Grit.Scale.P, 80), new Grit(Grit.Scale.P, 220));
    assertThat(Grit.tooFarAfter(jump)).containsExactly(jump.get(1));
  }

  /** 63 and 64: molar masses, arithmetic. */
  @Test
  void plasterHoldsMoreWaterThanItBinds() {
    assertThat(Gypsum.BOUND_WATER).isCloseTo(0.1862, within(0.0001));
    assertThat(Gypsum.dryGPerMl(0.70)).isCloseTo(1.098, within(0.001));
    assertThat(Gypsum.pores(0.70)).isCloseTo(0.527, within(0.001));
    assertThat(Gypsum.pores(0.40)).isCloseTo(0.345, within(0.001));
  }

  /** 65: arithmetic; 66: Gent (1958), from memory. */
  @Test
  void siliconeShrinksAndBulges() {
    assertThat(Silicone.shrunkMm(90, 0.003)).isCloseTo(90 - 0.27, within(1e-9));
    assertThat(Silicone.volumeShrink(0.003)).isCloseTo(0.00897, within(5e-6));
    assertThat(Silicone.modulusMPa(20)).isCloseTo(0.732, within(0.001));
    assertThat(Silicone.modulusMPa(30)).isCloseTo(1.142, within(0.001));
    assertThat(Silicone.bulge(2.0, 100, 45, 6, 20)).isCloseTo(0.0201, within(0.0001));
    assertThat(Silicone.bulge(2.0, 100, 45, 6, 30)).isCloseTo(0.0129, within(0.0001));
  }

  /** A box of 120 × 120 × 110 mm about a cup of 90 × 100 mm: closed form, elementary geometry. */
  @Test
  void siliconeForABoxMinusAMaster() {
    double box = 120 * 120 * 110 / 1000.0;
    double master = Math.PI / 4 * 90 * 90 * 100 / 1000;
    Silicone.Parts parts = Silicone.forBox(box, master, 1.1, 0.1, 0);
    assertThat(parts.totalG()).isCloseTo((box - master) * 1.1, within(1e-9));
    assertThat(parts.partBG()).isCloseTo(parts.partAG() / 10, within(1e-9));
    assertThatThrownBy(() -> Silicone.forBox(100, 120, 1.1, 0.1, 0)).isInstanceOf(OutOfRange.class);
  }

  /** 67: Stokes (1851); the yield-stress coefficient is from memory. */
  @Test
  void smallBubblesStay() {
    assertThat(Bubbles.riseMmPerS(1, 5, 2000)).isCloseTo(0.872, within(0.001));
    assertThat(Bubbles.heldBelowMm(10, 2000)).isCloseTo(3.57, within(0.01));
  }

  /** Common practice, no source: mixes that outlast the pot life are split. */
  @Test
  void aHotRoomSplitsACast() {
    assertThat(MixSplit.of(6, 1.5, 2, 12, 20)).isEqualTo(new MixSplit(1, 6, 12));
    MixSplit hot = MixSplit.of(6, 1.5, 2, 12, 30);
    assertThat(hot.potLifeMin()).isCloseTo(6.98, within(0.01));
    assertThat(hot.mixings()).isEqualTo(2);
    assertThat(hot.moldsEach()).isEqualTo(3);
    assertThatThrownBy(() -> MixSplit.of(6, 1.5, 6, 8, 35)).isInstanceOf(OutOfRange.class);
  }
}

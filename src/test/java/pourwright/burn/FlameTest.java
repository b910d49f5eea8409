package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

/** Flames by the figures that were published for candles. */
class FlameTest {

  /**
   * Hamins, Bundy and Dillon, J. Fire Prot. Eng. 15 (2005) 265, as quoted; 43.8 kJ/g worked out.
   */
  @Test
  void aTaperThatLoses0point105GramsAMinuteReleases77Watts() {
    double watts = Flame.releaseW(0.105 * 60, 43.8e6);
    assertThat(watts).isCloseTo(76.65, withPercentage(0.1));
    assertThat(200 / (0.105 * 60)).isCloseTo(31.7, within(0.05));
  }

  /** Burn-rate window of five pillar candles (Indoor Air 31, 2021): 4.4 to 7.3 g/h. */
  @Test
  void thePublishedWindowOfBurnRatesIs54To89Watts() {
    assertThat(Flame.releaseW(4.4, 43.8e6)).isCloseTo(53.5, withPercentage(0.1));
    assertThat(Flame.releaseW(7.3, 43.8e6)).isCloseTo(88.8, withPercentage(0.1));
  }

  /** Oxygen consumption, 12.7 MJ/kg of oxygen (Huggett 1980, from memory). */
  @Test
  void theHeatOfCombustionFollowsFromTheOxygen() {
    FlameRules.Fuel paraffin = FlameRules.Fuel.of(25, 52, 0);
    assertThat(paraffin.oxygenPerKg()).isCloseTo(3.448, withPercentage(0.1));
    assertThat(paraffin.netHeat(12.7e6)).isCloseTo(43.8e6, withPercentage(0.1));
    FlameRules.Fuel plant = FlameRules.Fuel.of(57, 110, 6);
    assertThat(plant.oxygenPerKg()).isCloseTo(2.925, withPercentage(0.1));
    assertThat(plant.netHeat(12.75e6)).isCloseTo(37.3e6, withPercentage(0.1));
    assertThat(FlameRules.Fuel.of(46, 92, 2).netHeat(12.75e6))
        .isCloseTo(41.0e6, withPercentage(0.2));
  }

  /** Point source over a disc; handbook of burning 1.4 and check value 31. */
  @Test
  void aPointOver25MillimetresSeesThePoolUnderAFactorOf0point22() {
    assertThat(FlameRules.discFactor(25, 37.5)).isCloseTo(.22265, withPercentage(0.1));
    assertThat(FlameRules.discFactor(25, 37.5) * .2 * 76.65).isCloseTo(3.413, withPercentage(0.1));
    assertThat(FlameRules.flux(.2 * 76.65, 25, 0)).isCloseTo(1952, withPercentage(0.1));
    double sum = 0;
    double step = .01;
    for (double r = step / 2; r < 37.5; r += step) {
      sum += FlameRules.flux(.2 * 76.65, 25, r) * 2 * Math.PI * r * step * 1e-6;
    }
    assertThat(sum).isCloseTo(3.413, withPercentage(0.1));
  }

  /** Roper 1977, formula from memory; measured 42 mm from pool to tip (Hamins 2005, as quoted). */
  @Test
  void ropersFlameIs29MillimetresOverTheWickTipAndTheMeasuredOneLiesInsideAQuarter() {
    double above = FlameRules.flameHeightMm(1.75);
    assertThat(above).isCloseTo(28.8, withPercentage(2));
    assertThat(above + 6).isCloseTo(42, withPercentage(25));
    assertThat(above + 12).isCloseTo(42, withPercentage(25));
  }

  /** Film model after Spalding; handbook 1.2: 1.70 mg/s beside a measured 1.75, trend only. */
  @Test
  void theFilmModelOfAWickGivesTheScaleOfTheMeasuredBurnRate() {
    assertThat(FlameRules.filmTransferNumber()).isCloseTo(1.81, within(.01));
    assertThat(FlameRules.filmBurnRateMgPerS(2, 6)).isCloseTo(1.70, withPercentage(1));
    assertThat(FlameRules.filmBurnRateMgPerS(2, 6)).isCloseTo(1.75, withPercentage(50));
  }
}

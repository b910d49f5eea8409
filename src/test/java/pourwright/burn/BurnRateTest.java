package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pourwright.burn.LiveLimit.Call;
import pourwright.burn.ProofRule.Asks;
import pourwright.burn.ProofRule.Change;
import pourwright.burn.ProofRule.Standing;
import pourwright.quantity.OutOfRange;

/** Burn rate from the scale, live limits, and the maker's rule to prove a design. */
class BurnRateTest {
  private static TestSample.Cycle cycle(double[]... minuteAndMass) {
    List<Reading> readings = new ArrayList<>();
    for (double[] p : minuteAndMass) {
      readings.add(new Reading(p[0], Map.of("mass_g", p[1])));
    }
    return new TestSample.Cycle(readings);
  }

  /** Worked by hand: 20 g in 4 h. */
  @Test
  void twentyGramsInFourHoursAreFiveGramsAnHour() {
    BurnRate rate = BurnRate.of(cycle(new double[] {0, 400}, new double[] {240, 380}), .5).get();
    assertThat(rate.gramsPerHour()).isCloseTo(5, within(1e-12));
    assertThat(rate.high() - 5)
        .isCloseTo(1.959964 * .5 / Math.sqrt(3) / Math.sqrt(8), within(1e-9));
    assertThat(rate.hoursLeft(100)[0]).isLessThan(20);
    assertThat(rate.hoursLeft(100)[1]).isCloseTo(20, within(1e-9));
    assertThat(rate.hoursLeft(100)[2]).isGreaterThan(20);
  }

  @Test
  void oneWeighingTellsNoRate() {
    assertThat(BurnRate.of(cycle(new double[] {0, 400}), .5)).isEmpty();
    assertThat(BurnRate.of(cycle(new double[] {5, 400}, new double[] {5, 399}), .5)).isEmpty();
  }

  /** The interval is what it says it is: planted rate 5 g/h, noise 0.4 g, five weighings. */
  @Test
  void theIntervalHoldsThePlantedRateInAboutNineteenOfTwentyTests() {
    Random random = new Random(7);
    int held = 0;
    for (int i = 0; i < 2000; i++) {
      List<double[]> points = new ArrayList<>();
      for (double minute : new double[] {0, 60, 120, 180, 240}) {
        points.add(new double[] {minute, 400 - 5 * minute / 60 + .4 * random.nextGaussian()});
      }
      BurnRate rate = BurnRate.of(cycle(points.toArray(double[][]::new)), .01).get();
      held += rate.low() <= 5 && 5 <= rate.high() ? 1 : 0;
    }
    assertThat(held).isBetween(1860, 1940);
  }

  private static Call call(String name, double value) {
    return LiveLimit.of(new Reading(30, Map.of(name, value)));
  }

  /** House: amber from 50 mm; 75 mm EN 15493:2019, from memory. */
  @Test
  void aFlameIsWatchedFromFiftyAndStoppedAtSeventyFive() {
    assertThat(call("flame_height_mm", 49.9).limit()).isEqualTo(LiveLimit.CALM);
    assertThat(call("flame_height_mm", 50).limit()).isEqualTo(LiveLimit.WATCH);
    assertThat(call("flame_height_mm", 74.9).limit()).isEqualTo(LiveLimit.WATCH);
    assertThat(call("flame_height_mm", 75).limit()).isEqualTo(LiveLimit.STOP);
    assertThat(call("crack", 1).limit()).isEqualTo(LiveLimit.STOP);
    assertThat(call("crack", 0).limit()).isEqualTo(LiveLimit.CALM);
    assertThat(call("seep", 1).limit()).isEqualTo(LiveLimit.STOP);
    assertThat(call("secondary_ignition_s", .5).limit()).isEqualTo(LiveLimit.STOP);
  }

  /** House: three full lives over two casts and two pours, wax-tight first. */
  @Test
  void theHouseRuleSaysWhatIsStillMissing() {
    ProofRule rule = ProofRule.house();
    assertThat(rule.missing(new Standing(3, 2, 2, true, true))).isEmpty();
    assertThat(rule.missing(new Standing(2, 2, 2, true, true)))
        .containsExactly("2 of 3 passed full lives");
    assertThat(rule.missing(new Standing(3, 1, 1, true, false))).hasSize(3);
    assertThat(rule.missing(new Standing(3, 2, 2, false, true)))
        .containsExactly("no sample was burnt to the very end");
  }

  @Test
  void theRuleIsHersToSetAndIsReadBack() {
    ProofRule own = ProofRule.of("5 3 2 12");
    assertThat(own).isEqualTo(new ProofRule(5, 3, 2, 12));
    assertThat(ProofRule.of(own.text())).isEqualTo(own);
    assertThatThrownBy(() -> ProofRule.of("three")).hasMessageContaining("rule of proof");
    assertThatThrownBy(() -> ProofRule.of("3 2 2 0")).isInstanceOf(OutOfRange.class);
  }

  /** House: a new lot asks for one check burn, anything else that is changed for a new test. */
  @Test
  void aNewLotAsksForOneCheckBurnAndAChangeForANewTest() {
    assertThat(Change.LOT_OF_OIL.asks()).isEqualTo(Asks.ONE_CHECK_BURN);
    assertThat(Change.SAFETY_SHEET.asks()).isEqualTo(Asks.A_NEW_TEST);
    for (Change change : Change.values()) {
      assertThat(change.asks())
          .isEqualTo(change.name().contains("LOT_") ? Asks.ONE_CHECK_BURN : Asks.A_NEW_TEST);
    }
  }
}

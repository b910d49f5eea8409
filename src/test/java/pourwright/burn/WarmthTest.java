package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pourwright.burn.WickFit.Kind;
import pourwright.burn.WickFit.Want;

/** Wall and underside in degrees: from three tests on, always with a band, never one figure. */
class WarmthTest {
  private static final double[] PLANTED = {3.5, 0.16, 30};

  private static Prototype candle() {
    Prototype p = new Prototype();
    p.grid = 5;
    p.hours = 1.5;
    p.sharp = true;
    p.wholeRows = false;
    return p;
  }

  /** What a test would read of a candle with planted parameters, off by so many kelvin. */
  private static List<TestFit.Got> test(double off, Kind... kinds) {
    List<Want> wants = new ArrayList<>();
    for (double h : new double[] {0.5, 1, 1.5}) {
      for (Kind kind : kinds) {
        wants.add(new Want(h, kind));
      }
    }
    double[] said = WickFit.simulate(candle().burn(), wants, PLANTED);
    List<TestFit.Got> got = new ArrayList<>();
    for (int i = 0; i < said.length; i++) {
      boolean warm = wants.get(i).kind() == Kind.WALL_C || wants.get(i).kind() == Kind.BASE_C;
      got.add(new TestFit.Got(wants.get(i), said[i] + (warm ? off : 0)));
    }
    return got;
  }

  private static double[] planted(Burn asked) {
    return WickFit.simulate(
        asked, List.of(new Want(1.5, Kind.WALL_C), new Want(1.5, Kind.BASE_C)), PLANTED);
  }

  @Test
  void twoTestsAreTooFewAndATestThatDidNotReadTheWallDoesNotCount() {
    List<TestFit.Got> all = test(0, Kind.values());
    List<TestFit.Got> blind = test(0, Kind.POOL_RADIUS_MM, Kind.POOL_DEPTH_MM);
    Burn burn = candle().burn();
    assertThat(Warmth.wallTests(List.of(all, blind, all))).isEqualTo(2);
    assertThat(Warmth.of(TestFit.lay(burn, List.of(all, all)), burn)).isEmpty();
    assertThat(Warmth.of(TestFit.lay(burn, List.of(all, blind, all)), burn)).isEmpty();
  }

  /** The planted temperatures of the tested candle and of a stronger wick lie in their bands. */
  @Test
  void threeTestsTellDegreesWithABandThatHoldsWhatWasPlanted() {
    List<TestFit.Got> all = test(0, Kind.values());
    Burn tested = candle().burn();
    Prototype strong = candle();
    strong.milligramsPerS *= 1.3;
    for (Burn asked : List.of(tested, strong.burn())) {
      Warmth warmth = Warmth.of(TestFit.lay(tested, List.of(all, all, all)), asked).orElseThrow();
      double[] truth = planted(asked);
      assertThat(warmth.tests()).isEqualTo(3);
      assertThat(truth[0]).isBetween(warmth.wall().lowC(), warmth.wall().highC());
      assertThat(truth[1]).isBetween(warmth.base().lowC(), warmth.base().highC());
      for (Warmth.Told told : List.of(warmth.wall(), warmth.base())) {
        assertThat(told.lowC()).isBetween(21.0, Math.max(21, told.likelyC() - 5));
        assertThat(told.highC() - told.likelyC()).isGreaterThanOrEqualTo(5);
        assertThat(told.highC() - told.lowC()).isLessThan(40);
      }
    }
  }

  /** Handbook of burning, 7.7: ±5 K for what three burns calibrated, ±10 K for what none did. */
  @Test
  void anUndersideThatWasNeverReadHasTheWidthOfAnUncalibratedOne() {
    Burn burn = candle().burn();
    List<TestFit.Got> all = test(0, Kind.values());
    List<TestFit.Got> noBase = test(0, Kind.POOL_RADIUS_MM, Kind.POOL_DEPTH_MM, Kind.WALL_C);
    Warmth read = Warmth.of(TestFit.lay(burn, List.of(all, all, all)), burn).orElseThrow();
    Warmth never =
        Warmth.of(TestFit.lay(burn, List.of(noBase, noBase, noBase)), burn).orElseThrow();
    assertThat(never.wall()).isEqualTo(read.wall());
    assertThat(never.base().lowC()).isEqualTo(Math.max(21, read.base().lowC() - 5));
    assertThat(never.base().highC()).isEqualTo(read.base().highC() + 5);
  }

  /** Later tests that were foretold badly widen the band: twice what the model was off. */
  @Test
  void laterTestsEnterTheScoreAndABadOneWidensTheBand() {
    Burn burn = candle().burn();
    List<TestFit.Got> all = test(0, Kind.values());
    List<TestFit.Got> warmer = test(8, Kind.values());
    List<List<TestFit.Foretold>> running = TestFit.running(burn, List.of(all, all, warmer));
    double wall = TestFit.score(running.get(2), Kind.WALL_C);
    assertThat(wall).isBetween(6.0, 10.0);
    assertThat(TestFit.score(running.get(2), Kind.BASE_C)).isBetween(6.0, 10.0);
    assertThat(TestFit.score(running.get(1), Kind.BASE_C)).isLessThan(2);
    Warmth good = Warmth.of(TestFit.lay(burn, List.of(all, all, all)), burn).orElseThrow();
    Warmth bad = Warmth.of(TestFit.lay(burn, List.of(all, all, warmer)), burn).orElseThrow();
    assertThat(bad.wall().highC() - bad.wall().lowC())
        .isGreaterThan(good.wall().highC() - good.wall().lowC() + 5);
  }
}

package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/**
 * What must hold of any burn: handbook of burning, check value 38. Small grids, wax leaving evenly.
 */
class BurnProperties {
  private static final int FEW = 7;

  private static Prototype small() {
    Prototype p = new Prototype();
    p.grid = 3.75;
    p.hours = 2;
    p.wholeRows = false;
    return p;
  }

  /** Pool radius when so many grams have burnt, between two records. */
  private static double radiusAt(BurnResult result, double gramsPerHour, double burntG) {
    BurnResult.Pool before = result.pool().get(0);
    for (BurnResult.Pool now : result.pool()) {
      if (now.hours() * gramsPerHour >= burntG) {
        double span = (now.hours() - before.hours()) * gramsPerHour;
        double share = span <= 0 ? 1 : (burntG - before.hours() * gramsPerHour) / span;
        return before.equivalentRadiusMm()
            + share * (now.equivalentRadiusMm() - before.equivalentRadiusMm());
      }
      before = now;
    }
    return before.equivalentRadiusMm();
  }

  @Property(tries = FEW)
  void aFasterWickAtEqualBurntMassDoesNotMeltLess(
      @ForAll @DoubleRange(min = 1.2, max = 1.7) double slow,
      @ForAll @DoubleRange(min = 0.2, max = 0.5) double more) {
    Prototype one = small();
    one.milligramsPerS = slow;
    Prototype other = small();
    other.milligramsPerS = slow + more;
    double burnt = 3.6 * slow * 2 * 0.95;
    double a = radiusAt(one.run(), 3.6 * slow, burnt);
    double b = radiusAt(other.run(), 3.6 * (slow + more), burnt);
    assertThat(b).isGreaterThanOrEqualTo(a - 0.6);
  }

  @Property(tries = FEW)
  void aBetterConductingVesselIsCoolerOutsideAndTheFullPoolIsNotEarlier(
      @ForAll @DoubleRange(min = 0.4, max = 1.0) double k,
      @ForAll @DoubleRange(min = 0.3, max = 1.0) double more) {
    Prototype one = small();
    one.k = k;
    one.room = 26;
    Prototype other = small();
    other.k = k + more;
    other.room = 26;
    BurnResult a = one.run();
    BurnResult b = other.run();
    assertThat(b.wallMaxC()).isLessThanOrEqualTo(a.wallMaxC() + 0.05);
    if (!Double.isNaN(b.fullPoolH())) {
      assertThat(a.fullPoolH()).isLessThanOrEqualTo(b.fullPoolH() + 1e-9);
    }
  }

  @Property(tries = FEW)
  void aWarmerRoomFillsThePoolEarlier(
      @ForAll @DoubleRange(min = 22, max = 26) double room,
      @ForAll @DoubleRange(min = 2, max = 6) double more) {
    Prototype one = small();
    one.k = .5;
    one.room = room;
    Prototype other = small();
    other.k = .5;
    other.room = room + more;
    BurnResult a = one.run();
    BurnResult b = other.run();
    assertThat(b.fullPoolH()).isNotNaN();
    if (!Double.isNaN(a.fullPoolH())) {
      assertThat(b.fullPoolH()).isLessThan(a.fullPoolH());
    }
  }

  @Property(tries = FEW)
  void withoutAFlameEverythingStaysAtRoomTemperature(
      @ForAll @DoubleRange(min = 10, max = 35) double room) {
    Prototype p = small();
    p.milligramsPerS = 0;
    p.room = room;
    BurnResult result = p.run();
    assertThat(result.wallMaxC()).isCloseTo(room, within(1e-9));
    assertThat(result.balance().heatInJ()).isZero();
    assertThat(result.pool().get(0).liquidG()).isZero();
  }

  @Property(tries = FEW)
  void heatAndWaxAreNeitherMadeNorLost(
      @ForAll @DoubleRange(min = 0.5, max = 2.5) double burning,
      @ForAll @DoubleRange(min = 0.05, max = 0.35) double chi,
      @ForAll @DoubleRange(min = 25, max = 45) double radius) {
    Prototype p = small();
    p.milligramsPerS = burning;
    p.chi = chi;
    p.radius = radius;
    BurnResult.Balance b = p.run().balance();
    assertThat(Math.abs(b.energyErrorFraction())).isLessThan(1e-10);
    assertThat(Math.abs(b.massErrorFraction())).isLessThan(1e-12);
  }

  @Property(tries = FEW)
  void withTheWickRootAloneTheSurfaceIsWarmestInTheMiddle(
      @ForAll @DoubleRange(min = 1, max = 6) double root) {
    Prototype p = small();
    p.chi = 0;
    p.root = root;
    float[][][] plan = new float[1][][];
    Simulation.run(
        p.burn(),
        (share, frame) -> {
          plan[0] = frame.plan();
          return true;
        });
    float[] row = plan[0][plan[0].length / 2];
    float last = 2;
    for (int x = row.length / 2; x < row.length && !Float.isNaN(row[x]); x++) {
      assertThat(row[x]).isLessThanOrEqualTo(last + 1e-6f);
      last = row[x];
    }
  }
}

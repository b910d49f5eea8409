package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A pool that is read while it grows says when it will be full, and how well that is known. */
class PoolGrowthTest {
  private static final double[] HOURS = {.25, .5, .75, 1, 1.5};

  private static List<double[]> read(double noise, Random random) {
    List<double[]> points = new ArrayList<>();
    for (double h : HOURS) {
      points.add(new double[] {h, 40 * Math.sqrt(h) * Math.exp(noise * random.nextGaussian())});
    }
    return points;
  }

  /** Worked by hand: 40 mm × √h is 70 mm wide after (70/40)² = 3.0625 h. */
  @Test
  void aRootOfTimeIsFoundExactly() {
    PoolGrowth growth = PoolGrowth.of(read(0, new Random(1)), 70).orElseThrow();
    assertThat(growth.widthAfterAnHourMm()).isCloseTo(40, within(1e-9));
    assertThat(growth.exponent()).isCloseTo(.5, within(1e-9));
    assertThat(growth.fullAfterH()).isCloseTo(3.0625, within(1e-9));
    assertThat(growth.highH() - growth.lowH()).isLessThan(1e-6);
  }

  @Test
  void aFullPoolSaysNothingOfGrowthAndTwoReadingsAreTooFew() {
    List<double[]> points = new ArrayList<>(read(0, new Random(1)));
    points.add(new double[] {4, 70});
    points.add(new double[] {5, 69});
    assertThat(PoolGrowth.of(points, 70).orElseThrow().readings()).isEqualTo(5);
    assertThat(PoolGrowth.of(points.subList(0, 2), 70)).isEmpty();
    assertThat(PoolGrowth.of(List.of(), 70)).isEmpty();
  }

  /** The interval is what it says: planted growth, 3 % noise, 95 % of 2000 to within 3 σ or so. */
  @Test
  void theIntervalHoldsThePlantedTimeInAboutNineteenOfTwenty() {
    Random random = new Random(11);
    int held = 0;
    int asked = 0;
    for (int i = 0; i < 2000; i++) {
      var growth = PoolGrowth.of(read(.03, random), 70);
      if (growth.isPresent()) {
        asked++;
        held += growth.get().lowH() <= 3.0625 && 3.0625 <= growth.get().highH() ? 1 : 0;
      }
    }
    assertThat(asked).isEqualTo(2000);
    assertThat(held).isBetween(1840, 1960);
  }
}

package pourwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pourwright.cast.Leftover;
import pourwright.cast.Leftover.Filled;
import pourwright.cast.Leftover.Filling;
import pourwright.cast.Leftover.Mold;

/** What to do with slurry that is left. The oracle counts every filling there is. */
class LeftoverPackingTest {
  private final CpSatLeftoverPacking packing = new CpSatLeftoverPacking();

  @Test
  void twoHundredSmallLeftoversAreWorthWhatCountingEveryFillingFinds() {
    Random random = new Random(11);
    for (int round = 0; round < 200; round++) {
      Leftover leftover = someLeftover(random);
      Filling found = packing.fill(leftover);
      double[] best = best(leftover, 0, leftover.volumeMl(), leftover.moldsAtMost());
      assertThat(found.proven()).isTrue();
      assertThat(found.value()).as("seed 11, round " + round).isCloseTo(best[0], within(1e-9));
      assertThat(found.usedMl()).as("seed 11, round " + round).isCloseTo(best[1], within(1e-6));
      assertThat(found.usedMl()).isLessThanOrEqualTo(leftover.volumeMl() + 1e-9);
    }
  }

  private static Leftover someLeftover(Random random) {
    List<Mold> molds = new ArrayList<>();
    int kinds = 1 + random.nextInt(5);
    for (int i = 0; i < kinds; i++) {
      double volume = (50 + random.nextInt(3000)) / 10.0;
      molds.add(new Mold("m" + i, volume, random.nextInt(5), random.nextInt(40) / 4.0));
    }
    int atMost = random.nextInt(4) == 0 ? 1 + random.nextInt(4) : Leftover.NO_LIMIT;
    return new Leftover(random.nextInt(9000) / 10.0, molds, atMost);
  }

  /** Greatest value, then greatest use, by trying every count of every kind. */
  private static double[] best(Leftover leftover, int kind, double leftMl, int molds) {
    if (kind == leftover.molds().size()) {
      return new double[] {0, 0};
    }
    Mold mold = leftover.molds().get(kind);
    double[] best = {-1, -1};
    for (int n = 0; n <= mold.free() && n <= molds && n * mold.volumeMl() <= leftMl + 1e-9; n++) {
      double[] rest = best(leftover, kind + 1, leftMl - n * mold.volumeMl(), molds - n);
      double value = rest[0] + n * mold.value();
      double used = rest[1] + n * mold.volumeMl();
      if (value > best[0] + 1e-9 || (value > best[0] - 1e-9 && used > best[1])) {
        best = new double[] {value, used};
      }
    }
    return best;
  }

  @Test
  void fortyFreeMoldsOfTwelveSizesArePackedWithinASecond() {
    packing.fill(new Leftover(10, List.of(new Mold("warm up", 5, 1, 1)), 1));
    Random random = new Random(5);
    for (int round = 0; round < 5; round++) {
      List<Mold> molds = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        double volume = (400 + random.nextInt(4000)) / 10.0;
        molds.add(new Mold("m" + i, volume, i < 4 ? 4 : 3, Math.round(volume * 7) / 100.0 + i));
      }
      long from = System.nanoTime();
      Filling filling = packing.fill(new Leftover(2345.6, molds, Leftover.NO_LIMIT));
      assertThat(filling.proven()).isTrue();
      assertThat((System.nanoTime() - from) * 1e-9).isLessThan(1.0);
    }
  }

  @Test
  void aMoldThatDoesNotFitWholeStaysEmpty() {
    Filling filling =
        packing.fill(
            new Leftover(
                100,
                List.of(new Mold("Limpet", 30, 9, 1), new Mold("Bollard", 365, 2, 50)),
                Leftover.NO_LIMIT));
    assertThat(filling.fill()).containsExactly(new Filled("Limpet", 3));
    assertThat(filling.usedMl()).isEqualTo(90);
  }

  @Test
  void nothingLeftFillsNothing() {
    Filling filling =
        packing.fill(new Leftover(0, List.of(new Mold("Limpet", 30, 9, 1)), Leftover.NO_LIMIT));
    assertThat(filling.fill()).isEmpty();
    assertThat(filling.proven()).isTrue();
  }
}

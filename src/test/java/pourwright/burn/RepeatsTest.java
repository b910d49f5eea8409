package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pourwright.quantity.OutOfRange;

/** Means of repeats and their differences. */
class RepeatsTest {
  private static Repeats of(Double... values) {
    return Repeats.of(List.of(values)).orElseThrow();
  }

  /** t(0.975, 2) = 4.3027, t(0.975, 4) = 2.7764: any table of Student's t. */
  @Test
  void theIntervalIsStudents() {
    Repeats three = of(4.0, 5.0, 6.0);
    assertThat(three.mean()).isCloseTo(5, within(1e-12));
    assertThat(three.high() - three.mean()).isCloseTo(4.3027 / Math.sqrt(3), within(1e-4));
    Repeats five = of(4.0, 4.5, 5.0, 5.5, 6.0);
    assertThat(five.mean() - five.low()).isCloseTo(2.7764 * Math.sqrt(0.625 / 5), within(1e-4));
  }

  @Test
  void oneCandleHasAValueAndNoInterval() {
    assertThat(of(5.0).low()).isNaN();
    assertThat(of(5.0).over(of(4.0, 5.0))).isEmpty();
    assertThat(Repeats.of(List.of())).isEmpty();
    assertThat(of(5.0, 5.0).over(of(4.0, 4.0))).isEmpty();
    assertThatThrownBy(() -> of(Double.NaN, 1.0)).isInstanceOf(OutOfRange.class);
  }

  /** Equal numbers and variances: Welch's degrees of freedom are 2(n − 1); t(0.975, 4) = 2.7764. */
  @Test
  void theDifferenceIsWelchs() {
    Repeats.Difference d = of(6.0, 7.0, 8.0).over(of(4.0, 5.0, 6.0)).orElseThrow();
    assertThat(d.by()).isCloseTo(2, within(1e-12));
    assertThat(d.high() - d.by()).isCloseTo(2.7764 * Math.sqrt(2.0 / 3), within(1e-4));
    assertThat(d.cannotBeToldApart()).isTrue();
    assertThat(of(6.9, 7.0, 7.1).over(of(4.9, 5.0, 5.1)).orElseThrow().cannotBeToldApart())
        .isFalse();
  }

  /** Planted difference, unequal scatter: held in about 95 of 100. */
  @Test
  void theDifferenceHoldsWhatWasPlanted() {
    Random random = new Random(11);
    int held = 0;
    for (int run = 0; run < 2000; run++) {
      List<Double> a = new ArrayList<>();
      List<Double> b = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        a.add(5.6 + 0.3 * random.nextGaussian());
        b.add(4.8 + 0.1 * random.nextGaussian());
      }
      Repeats.Difference d =
          Repeats.of(a).orElseThrow().over(Repeats.of(b).orElseThrow()).orElseThrow();
      held += d.low() <= 0.8 && d.high() >= 0.8 ? 1 : 0;
    }
    assertThat(held).isBetween(1850, 1970);
  }
}

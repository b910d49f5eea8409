package pourwright.cast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import pourwright.quantity.OutOfRange;

/** How much slower a cold shed is. */
class ColdShedTest {
  @Test
  void aShedAtTwentyDegreesIsAsFastAsTheCard() {
    assertThat(ColdShed.at(20)).isEqualTo(new ColdShed(1, 1));
  }

  @Test
  void saturationIsThatOfTheSteamTables() {
    // W. Wagner, A. Pruss, Journal of Physical and Chemical Reference Data 31 (2002) 387-535:
    // 20 degrees 2.34 kPa; 10 degrees 1.228 kPa
    assertThat(ColdShed.saturationKpa(20)).isCloseTo(2.34, within(0.01));
    assertThat(ColdShed.saturationKpa(10)).isCloseTo(1.228, within(0.005));
  }

  @Test
  void tenDegreesTakeNearlyTwiceAsLong() {
    // ASTM C1074, equivalent age with Q = E/R: exp(40000 / 8.314 (1/283.15 - 1/293.15)) = 1.79
    ColdShed cold = ColdShed.at(10);
    double expected = Math.exp(40_000 / 8.314 * (1 / 283.15 - 1 / 293.15));
    assertThat(cold.harden()).isCloseTo(expected, within(0.01));
    assertThat(cold.dry()).isCloseTo(2.339 / 1.228, within(0.02));
  }

  @Test
  void frostIsRefused() {
    assertThatThrownBy(() -> ColdShed.at(0)).isInstanceOf(OutOfRange.class);
  }
}

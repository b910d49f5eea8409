package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import pourwright.plan.OwnYield.Step;

/** Losses step by step. The issue's own example: 12 good of a yield of 88 % are 14 castings. */
class OwnYieldTest {
  @Test
  void twelveGoodAtEightyEightPercentAreFourteen() {
    // 100 cast, 95 whole; of 95 whole ones 88 became candles: 0.95 · 88/95 = 0.88
    OwnYield yield = new OwnYield(new Step(100, 95), new Step(95, 88), new Step(88, 88));
    assertThat(yield.vesselShare()).isCloseTo(0.88, within(1e-12));
    assertThat(yield.toCast(12)).isEqualTo(14);
    assertThat(yield.toPour(12)).isEqualTo(12);
    assertThat(yield.applied(Habits.HOUSE).vesselReject()).isCloseTo(0.12, within(1e-12));
    assertThat(yield.applied(Habits.HOUSE).candleReject()).isZero();
  }

  @Test
  void fewerThanTenPiecesTellNothing() {
    OwnYield yield = new OwnYield(new Step(9, 0), new Step(9, 0), new Step(9, 0));
    assertThat(yield.own()).isFalse();
    assertThat(yield.applied(Habits.HOUSE)).isEqualTo(Habits.HOUSE);
    assertThat(yield.vesselShare()).isCloseTo(1 - Habits.HOUSE.vesselReject(), within(1e-12));
  }

  @Test
  void aRuinedSeriesDoesNotGrowWithoutEnd() {
    OwnYield yield = new OwnYield(new Step(20, 0), new Step(0, 0), new Step(0, 0));
    assertThat(yield.toCast(3)).isEqualTo(30);
  }
}

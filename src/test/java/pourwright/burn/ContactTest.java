package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import pourwright.quantity.OutOfRange;

/** A gap between wax and vessel. */
class ContactTest {
  private static Burn candle() {
    Prototype p = new Prototype();
    p.grid = 5;
    p.hours = 1;
    p.sharp = true;
    p.wholeRows = false;
    return p.burn();
  }

  /** Handbook of burning, 7.3: perfect, or 100 W/(m²·K) as sensitivity. The signs are physics. */
  @Test
  void aGapLeavesTheHeatInTheWaxAndTheWallCooler() {
    BurnResult close = Simulation.run(candle());
    BurnResult apart = Simulation.run(candle().withContact(100));
    assertThat(last(apart).liquidG()).isGreaterThan(last(close).liquidG());
    assertThat(last(apart).wallC()).isLessThan(last(close).wallC());
    assertThat(Math.abs(apart.balance().energyErrorFraction())).isLessThan(1e-6);
    assertThat(Math.abs(apart.balance().massErrorFraction())).isLessThan(1e-9);
  }

  @Test
  void aVeryGoodContactIsAPerfectOne() {
    BurnResult close = Simulation.run(candle());
    BurnResult good = Simulation.run(candle().withContact(1e9));
    assertThat(last(good).liquidG()).isCloseTo(last(close).liquidG(), within(1e-3));
    assertThat(last(good).wallC()).isCloseTo(last(close).wallC(), within(1e-3));
  }

  @Test
  void noContactAtAllIsRefused() {
    assertThatThrownBy(() -> candle().withContact(0)).isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> candle().withContact(Double.NaN)).isInstanceOf(OutOfRange.class);
  }

  private static BurnResult.Pool last(BurnResult result) {
    return result.pool().get(result.pool().size() - 1);
  }
}

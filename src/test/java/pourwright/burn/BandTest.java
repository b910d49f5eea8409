package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The band of a simulated burn. */
class BandTest {
  private static Burn burn() {
    Prototype p = new Prototype();
    p.hours = 1;
    p.wholeRows = false;
    return p.burn();
  }

  @Test
  void theBandHoldsTheMiddleRunAndTheSameSeedGivesTheSameBand() {
    Band band = Band.of(burn(), 20, 3, () -> true);
    Band same = Band.of(burn(), 20, 3, () -> true);
    BurnResult middle = Simulation.run(burn());
    assertThat(same.radiusLowMm()).isEqualTo(band.radiusLowMm());
    assertThat(same.radiusHighMm()).isEqualTo(band.radiusHighMm());
    for (int i = 1; i < band.hours().length; i++) {
      double radius = middle.pool().get(i).equivalentRadiusMm();
      assertThat(radius).isBetween(band.radiusLowMm()[i] - 1, band.radiusHighMm()[i] + 1);
      assertThat(band.radiusHighMm()[i]).isGreaterThan(band.radiusLowMm()[i] + 1);
    }
  }

  @Test
  void aBandThatIsBrokenOffStandsOnTheRunsSoFar() {
    int[] asked = {0};
    Band band = Band.of(burn(), 20, 3, () -> asked[0]++ < 3);
    assertThat(band.hours()).isNotEmpty();
    assertThat(asked[0]).isEqualTo(4);
  }
}

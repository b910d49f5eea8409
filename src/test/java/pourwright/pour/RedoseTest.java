package pourwright.pour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pourwright.pour.Dose.LoadOf;
import pourwright.quantity.OutOfRange;

class RedoseTest {

  @Property
  void correctingAWrongDoseReachesTheLoadExactlyAndAddsOnlyOneThing(
      @ForAll @DoubleRange(min = 1, max = 5000) double waxG,
      @ForAll @DoubleRange(min = 0, max = 800) double fragranceG,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double load,
      @ForAll LoadOf of) {
    Redose redose = Redose.of(new Dose(waxG, fragranceG), load, of, null);
    Dose after = new Dose(waxG + redose.addWaxG(), fragranceG + redose.addFragranceG());
    double reached = of == LoadOf.TOTAL ? after.loadOfTotal() : after.loadOfWax();
    assertThat(reached).isCloseTo(load, within(1e-12));
    assertThat(Math.min(redose.addWaxG(), redose.addFragranceG())).isZero();
  }

  @Property
  void aTargetTotalIsReachedWithTheLoadOrSaidToBeOutOfReach(
      @ForAll @DoubleRange(min = 1, max = 1000) double waxG,
      @ForAll @DoubleRange(min = 0, max = 100) double fragranceG,
      @ForAll @DoubleRange(min = 1, max = 3000) double totalG) {
    Redose redose = Redose.of(new Dose(waxG, fragranceG), 0.08, LoadOf.TOTAL, totalG);
    Dose after = new Dose(waxG + redose.addWaxG(), fragranceG + redose.addFragranceG());
    assertThat(after.loadOfTotal()).isCloseTo(0.08, within(1e-9));
    if (redose.warnings().isEmpty()) {
      assertThat(after.totalG()).isCloseTo(totalG, within(1e-9 * totalG));
    } else {
      assertThat(after.totalG()).isGreaterThan(totalG);
    }
  }

  /** By hand: 500 g of wax at 8 % on the total wants 43.478 g; 40 g are in. */
  @Test
  void aWeakPitcherGetsFragrance() {
    Redose redose = Redose.of(new Dose(500, 40), 0.08, LoadOf.TOTAL, null);
    assertThat(redose.addFragranceG()).isCloseTo(500 * 0.08 / 0.92 - 40, within(1e-12));
    assertThat(redose.addWaxG()).isZero();
  }

  /** By hand: 50 g of fragrance at 8 % on the wax wants 625 g of wax; 500 g are in. */
  @Test
  void aStrongPitcherGetsWax() {
    Redose redose = Redose.of(new Dose(500, 50), 0.08, LoadOf.WAX, null);
    assertThat(redose.addWaxG()).isCloseTo(125, within(1e-9));
  }

  @Test
  void aPitcherAboveTheTargetIsSaid() {
    assertThat(Redose.of(new Dose(500, 40), 0.08, LoadOf.TOTAL, 400.0).warnings()).hasSize(1);
  }

  @Test
  void whatCannotBePutRightIsRefused() {
    assertThatThrownBy(() -> Redose.of(new Dose(100, 5), 1, LoadOf.TOTAL, null))
        .isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> Redose.of(new Dose(0, 5), 0.08, LoadOf.TOTAL, null))
        .isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> Redose.of(new Dose(100, 5), 0, LoadOf.TOTAL, null))
        .isInstanceOf(OutOfRange.class);
  }
}

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

class DoseTest {

  /** Common practice, no source: 21 oz of candles at 10 %. */
  @Test
  void tenPercentOnTheTotalOf21OuncesIs2point1OuncesOfFragrance() {
    Dose dose = Dose.ofTotal(21, 0.10, LoadOf.TOTAL);
    assertThat(dose.fragranceG()).isCloseTo(2.1, within(1e-12));
    assertThat(dose.waxG()).isCloseTo(18.9, within(1e-12));
  }

  /** Common practice, no source: the same with the load on the wax. */
  @Test
  void tenPercentOnTheWaxOf21OuncesIs1point909OuncesOfFragrance() {
    Dose dose = Dose.ofTotal(21, 0.10, LoadOf.WAX);
    assertThat(dose.fragranceG()).isCloseTo(1.909, within(5e-4));
    assertThat(dose.waxG()).isCloseTo(19.091, within(5e-4));
  }

  /** Handbook compliance, check value 31: 8 g of oil to 100 g of wax is 7.407 % of the total. */
  @Test
  void eightPercentOfWaxIs7point407PercentOfTheTotal() {
    assertThat(Dose.ofWax(100, 0.08, LoadOf.WAX).loadOfTotal()).isCloseTo(0.07407, within(5e-6));
  }

  @Property
  void loadOnTotalAndLoadOnWaxAreInverseToEachOther(
      @ForAll @DoubleRange(min = 0, max = 0.99) double load,
      @ForAll @DoubleRange(min = 0.01, max = 1e6) double totalG) {
    Dose onTotal = Dose.ofTotal(totalG, load, LoadOf.TOTAL);
    Dose onWax = Dose.ofTotal(totalG, onTotal.loadOfWax(), LoadOf.WAX);
    assertThat(onWax.fragranceG()).isCloseTo(onTotal.fragranceG(), within(1e-9 * totalG));
  }

  @Test
  void aLoadOfTheWholeLeavesNoWaxAndIsRefused() {
    assertThatThrownBy(() -> Dose.ofTotal(100, 1, LoadOf.TOTAL)).isInstanceOf(OutOfRange.class);
  }
}

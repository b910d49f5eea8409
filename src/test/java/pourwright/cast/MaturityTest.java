package pourwright.cast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.cast.Maturity.Line;
import pourwright.cast.Maturity.Log;
import pourwright.quantity.OutOfRange;

class MaturityTest {
  private static final Log DAY =
      new Log(List.of(new Line(0, 15), new Line(6, 22), new Line(12, 18), new Line(24, 0)));

  /** Civil engineering textbook example as restated (check value 20): 28 d at 15 °C, T₀ −11. */
  @Test
  void twentyEightDaysAt15DegreesAre728DegreeDays() {
    assertThat(Maturity.nurseSaul(Log.steady(15, 28 * 24), -11) / 24).isEqualTo(728);
  }

  /** Check values 21 and 22; ASTM C1074. */
  @Test
  void aDayOfThreeTemperatures() {
    assertThat(Maturity.nurseSaul(DAY, 0)).isEqualTo(438);
    assertThat(Maturity.nurseSaul(DAY, -10)).isEqualTo(678);
    assertThat(Maturity.equivalentAgeH(DAY, 20, 33.5)).isCloseTo(22.23, within(0.005));
    assertThat(Maturity.equivalentAgeH(DAY, 20, 40)).isCloseTo(21.94, within(0.005));
    assertThat(Maturity.equivalentAgeH(DAY, 20, 45)).isCloseTo(21.73, within(0.005));
    assertThat(Maturity.equivalentAgeH(DAY, 20, 5000 * Maturity.GAS / 1000))
        .isCloseTo(21.87, within(0.005));
  }

  /** The other worked history of section 3.2. */
  @Test
  void twoHoursEachAt10And20And30() {
    Log log = new Log(List.of(new Line(0, 10), new Line(2, 20), new Line(4, 30), new Line(6, 0)));
    assertThat(Maturity.nurseSaul(log, 0)).isEqualTo(120);
    assertThat(Maturity.equivalentAgeH(log, 20, 40)).isCloseTo(6.557, within(5e-4));
  }

  /** Check values 23 and 24 with the table of age factors; computed from the formula. */
  @ParameterizedTest
  @CsvSource({
    "5, 33.5, .4765", "5, 40, .4127", "5, 45, .3695", "10, 33.5, .6154", "10, 40, .5601",
    "10, 41.5, .5481", "15, 40, .7522", "25, 40, 1.3168", "30, 40, 1.7183", "30, 45, 1.8386",
    "40, 33.5, 2.4056", "40, 40, 2.8523", "30, 41.5723, 1.7553", "10, 41.5723, .5475", "20, 40, 1"
  })
  void ageFactors(double celsius, double energy, double factor) {
    assertThat(Maturity.ageFactor(celsius, 20, energy)).isCloseTo(factor, within(6e-5));
  }

  /** Freiesleben Hansen and Pedersen (1977), from memory; the last column of the table. */
  @ParameterizedTest
  @CsvSource({"5, .2926", "10, .4974", "15, .7477", "30, 1.5736"})
  void portlandNeedsMoreEnergyInTheCold(double celsius, double factor) {
    double energy = Maturity.portlandActivationEnergy(celsius);
    assertThat(Maturity.ageFactor(celsius, 20, energy)).isCloseTo(factor, within(6e-5));
  }

  /** Check value 25. */
  @ParameterizedTest
  @CsvSource({"10, 35.71", "15, 26.59", "25, 15.19", "30, 11.64", "35, 9.00"})
  void twentyMinutesAt20DegreesAreMoreInTheCold(double celsius, double minutes) {
    assertThat(Maturity.timeAt(20, 20, celsius, 40)).isCloseTo(minutes, within(0.006));
  }

  /** Check value 26: the field rule after ACI 305/306, half the time for 20 °F more. */
  @Test
  void halfTheTimeFor20FahrenheitMoreIs46point3KilojoulesPerMol() {
    assertThat(Maturity.activationEnergy(2, 20, 1, 20 + 100 / 9.0)).isCloseTo(46.3, within(0.05));
    assertThat(Maturity.activationEnergy(1, 20, 2, 20 - 100 / 9.0)).isCloseTo(42.9, within(0.05));
  }

  @Test
  void aReversedADoubledAndAGappedLogAreRefusedWithTheLine() {
    assertThatThrownBy(() -> new Log(List.of(new Line(0, 15), new Line(6, 22), new Line(5, 18))))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("line 3");
    assertThatThrownBy(() -> new Log(List.of(new Line(0, 15), new Line(0, 22))))
        .hasMessageContaining("line 2");
    assertThatThrownBy(() -> DAY.withoutGapsOver(8)).hasMessageContaining("line 4");
    assertThat(DAY.withoutGapsOver(12)).isSameAs(DAY);
    assertThatThrownBy(() -> new Log(List.of(new Line(0, 15)))).isInstanceOf(OutOfRange.class);
  }

  @Test
  void whatIsBelowTheDatumCountsNothing() {
    assertThat(Maturity.nurseSaul(Log.steady(-5, 10), 0)).isZero();
  }
}

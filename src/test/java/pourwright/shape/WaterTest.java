package pourwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;

class WaterTest {

  /** Tanaka et al., Metrologia 38 (2001) 301; values computed from the published formula. */
  @ParameterizedTest
  @CsvSource({
    "0, 999.8428",
    "4, 999.9749",
    "10, 999.7027",
    "15, 999.1026",
    "20, 998.2067",
    "22, 997.7730",
    "25, 997.0470",
    "30, 995.6488",
    "35, 994.0326",
    "40, 992.2152"
  })
  void waterWeighsWhatTheFormulaSays(double celsius, double kgPerM3) {
    assertThat(Water.gramsPerMl(celsius) * 1000).isCloseTo(kgPerM3, within(1e-4));
  }

  /** Kell, J. Chem. Eng. Data 20 (1975) 97, an independent formula, to 0.004 kg/m³ or better. */
  @ParameterizedTest
  @CsvSource({"0", "5", "10", "20", "30", "40"})
  void waterAgreesWithKell(double t) {
    double over =
        999.83952
            + t
                * (16.945176
                    + t
                        * (-7.9870401e-3
                            + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
    double kell = over / (1 + 16.879850e-3 * t);
    assertThat(Water.gramsPerMl(t) * 1000).isCloseTo(kell, within(0.005));
  }

  /** ISO 8655-6: 1.0029 ml/g at 20 °C, four decimals; the others from the same formula. */
  @ParameterizedTest
  @CsvSource({"15, 1.00195", "20, 1.00285", "22, 1.00329", "25, 1.00402"})
  void aGramInAirIsALittleMoreThanAMillilitre(double celsius, double mlPerG) {
    assertThat(Water.mlPerGram(celsius)).isCloseTo(mlPerG, within(6e-6));
  }

  /** Check value 61. */
  @Test
  void aMoldOf248point8GramsOfWaterAt22DegreesHolds249point62() {
    assertThat(Water.volumeMl(412.3, 661.1, 22, 0.1).value()).isCloseTo(249.62, within(0.005));
  }

  /** 350.63 by density alone, 351.00 with buoyancy. */
  @Test
  void aVesselThatTakes350GramsOfWaterAt20DegreesHolds351Millilitres() {
    Sourced volume = Water.volumeMl(200, 550, 20, 1);
    assertThat(volume.value()).isCloseTo(351.00, within(0.005));
    assertThat(350 / Water.gramsPerMl(20)).isCloseTo(350.63, within(0.005));
    assertThat(volume.relativeUncertainty()).isBetween(0.005, 0.0052);
  }

  @Test
  void aCoarseScaleMakesASmallVesselUncertain() {
    assertThat(Water.volumeMl(20, 30, 20, 1).relativeUncertainty()).isGreaterThan(0.04);
  }

  @Test
  void exchangedWeightsAndHotWaterAreRefused() {
    assertThatThrownBy(() -> Water.volumeMl(550, 200, 20, 1)).isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> Water.volumeMl(200, 550, 68, 1)).isInstanceOf(OutOfRange.class);
  }
}

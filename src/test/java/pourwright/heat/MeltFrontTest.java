package pourwright.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The solver of the candle in one dimension against the closed forms of melting. */
class MeltFrontTest {
  /** Paraffin of the checks: solid and liquid alike but for what the two-phase case changes. */
  private static final Melting ONE_PHASE = new Melting(55, 55, 200e3, 2200, 2200, .15, .15, 800);

  private static final Melting TWO_PHASE = new Melting(55, 55, 200e3, 2000, 2200, .24, .15, 800);

  /** Case of a published solver's documentation; melting at 26 °C. */
  private static Melting published(double solid) {
    return new Melting(26, 26, 179e3, 2500, 2500, solid, 1.5, 870);
  }

  private static MeltFront.Case of(Melting wax, double initialC, double lengthMm, double gridMm) {
    return new MeltFront.Case(wax, initialC, lengthMm, gridMm, MeltFront.Faces.INTEGRAL);
  }

  /** Crank, Free and Moving Boundary Problems, equation 3.14. */
  @ParameterizedTest
  @CsvSource({
    "0.01, 0.070593",
    "0.1, 0.220016",
    "0.2, 0.306424",
    "0.5, 0.464786",
    "1, 0.620063",
    "2, 0.800601"
  })
  void neumannsLambdaIsCranks(double stefan, double lambda) {
    Melting wax = new Melting(50, 50, 1000 / stefan, 1, 1, 1, 1, 1);
    assertThat(new Neumann(wax, 50, 1050).lambda()).isCloseTo(lambda, within(1e-5));
  }

  /** Worked out from the transcendental equation; handbook of burning, section 4.2. */
  @Test
  void theClosedFormsGiveTheWrittenDownFronts() {
    Neumann p1 = new Neumann(ONE_PHASE, 55, 80);
    assertThat(p1.frontM(3600)).isCloseTo(12.450e-3, within(1e-6));
    assertThat(p1.celsius(2e-3, 3600)).isCloseTo(75.819, within(1e-3));
    Neumann p2 = new Neumann(TWO_PHASE, 20, 80);
    assertThat(p2.frontM(3600)).isCloseTo(8.347e-3, within(1e-6));
    assertThat(p2.celsius(20e-3, 3600)).isCloseTo(43.763, within(1e-3));
    Neumann pair = new Neumann(published(.024), 16, 36);
    assertThat(pair.secondsTo(50e-3)).isCloseTo(15590.7, within(0.1));
    assertThat(pair.frontM(15590.7 + 7200)).isCloseTo(60.45e-3, within(1e-5));
    assertThat(new LineSource(TWO_PHASE, 55, 50).frontM(3600)).isCloseTo(16.855e-3, within(1e-6));
    assertThat(new LineSource(TWO_PHASE, 20, 50).frontM(3600)).isCloseTo(8.727e-3, within(1e-6));
    assertThat(new LineSource(TWO_PHASE, 20, 100).frontM(3600)).isCloseTo(14.843e-3, within(1e-6));
    assertThat(new LineSource(TWO_PHASE, 20, 10).frontM(3600)).isCloseTo(0.177e-3, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"1, 1.5", "0.25, 0.5"})
  void aSlabMeltsAsNeumannSaid(double gridMm, double percent) {
    MeltFront p1 = MeltFront.slab(of(ONE_PHASE, 55, 60, gridMm), 80);
    assertThat(p1.frontsM(new double[] {3600})[0])
        .isCloseTo(new Neumann(ONE_PHASE, 55, 80).frontM(3600), withPercentage(percent));
    assertThat(p1.celsius(2e-3)).isCloseTo(75.819, within(0.3));
    MeltFront p2 = MeltFront.slab(of(TWO_PHASE, 20, 120, gridMm), 80);
    assertThat(p2.frontsM(new double[] {3600})[0])
        .isCloseTo(new Neumann(TWO_PHASE, 20, 80).frontM(3600), withPercentage(percent));
    assertThat(p2.celsius(20e-3)).isCloseTo(43.763, within(0.3));
  }

  /** The published pair: 81 % of 0.1 m after 36 000 s; two phases, 60 % 7200 s after 50 %. */
  @ParameterizedTest
  @CsvSource({"1, 1.5", "0.25, 0.5"})
  void thePublishedPairIsMet(double gridMm, double percent) {
    MeltFront one = MeltFront.slab(of(published(1.5), 26, 100, gridMm), 36);
    assertThat(one.frontsM(new double[] {36000})[0]).isCloseTo(81.44e-3, withPercentage(percent));
    MeltFront two = MeltFront.slab(of(published(.024), 16, 100, gridMm), 36);
    assertThat(two.frontsM(new double[] {22790.7})[0]).isCloseTo(60.45e-3, withPercentage(percent));
  }

  @ParameterizedTest
  @CsvSource({"1, 1.5", "0.25, 0.5"})
  void aCylinderMeltsRoundALineAsTheClosedFormSays(double gridMm, double percent) {
    for (double[] c : new double[][] {{50, 55, 16.855}, {50, 20, 8.727}, {100, 20, 14.843}}) {
      MeltFront line = MeltFront.line(of(TWO_PHASE, c[1], 120, gridMm), c[0]);
      assertThat(line.frontsM(new double[] {3600})[0])
          .as("%s W/m from %s °C", c[0], c[1])
          .isCloseTo(c[2] * 1e-3, withPercentage(percent));
    }
  }

  /** The candle's own faces do as well but for the published pair, whose phases differ 62-fold. */
  @ParameterizedTest
  @CsvSource({"1, 1.5", "0.25, 0.5"})
  void theHarmonicMeanMeltsAsTheClosedFormsToo(double gridMm, double percent) {
    MeltFront.Faces harmonic = MeltFront.Faces.HARMONIC;
    double[] hour = {3600};
    MeltFront.Case one = new MeltFront.Case(ONE_PHASE, 55, 60, gridMm, harmonic);
    assertThat(MeltFront.slab(one, 80).frontsM(hour)[0])
        .isCloseTo(12.450e-3, withPercentage(percent));
    MeltFront.Case two = new MeltFront.Case(TWO_PHASE, 20, 120, gridMm, harmonic);
    assertThat(MeltFront.slab(two, 80).frontsM(hour)[0])
        .isCloseTo(8.347e-3, withPercentage(percent));
    assertThat(MeltFront.line(two, 50).frontsM(hour)[0])
        .isCloseTo(8.727e-3, withPercentage(percent));
  }
}

package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pourwright.burn.Calibration.Estimate;
import pourwright.burn.Calibration.Fitted;
import pourwright.burn.Calibration.Parameter;
import pourwright.burn.WickFit.Kind;
import pourwright.burn.WickFit.Want;
import pourwright.quantity.OutOfRange;

/** Planted parameters are found again, and what cannot be told apart is said. */
class CalibrationTest {
  private static final List<Want> WANTS =
      List.of(
          new Want(.5, Kind.POOL_RADIUS_MM),
          new Want(1, Kind.POOL_RADIUS_MM),
          new Want(2, Kind.POOL_RADIUS_MM),
          new Want(1, Kind.POOL_DEPTH_MM),
          new Want(2, Kind.POOL_DEPTH_MM),
          new Want(1, Kind.WALL_C),
          new Want(2, Kind.WALL_C));
  private static final double[] SPREAD = {.4, .4, .4, .4, .4, .4, .4};
  private static final double[] PLANTED = {4, .2, 35};

  private static Burn candle() {
    Prototype p = new Prototype();
    p.radius = 45;
    p.grid = 3.75;
    p.hours = 2;
    p.wholeRows = false;
    return p.burn();
  }

  /** A quick stand-in: three parameters, seven readings, bent but smooth. */
  private static double[] bent(double[] p) {
    double[] said = new double[7];
    for (int i = 0; i < said.length; i++) {
      double x = (i + 1) / 7.0;
      said[i] =
          p[0] * x + 30 * p[1] * x * x + .2 * p[2] * (1 - x) + .05 * p[0] * p[0] * (1 - x) * x;
    }
    return said;
  }

  private static int held(Function<double[], double[]> model, int seeds, int which) {
    double[] truth = model.apply(PLANTED);
    int held = 0;
    for (int seed = 1; seed <= seeds; seed++) {
      Random random = new Random(seed);
      double[] read = new double[truth.length];
      Arrays.setAll(read, i -> truth[i] + SPREAD[i] * random.nextGaussian());
      Fitted fitted = Calibration.fit(model, WickFit.PARAMETERS, read, SPREAD);
      Estimate e = fitted.estimates().get(which);
      held += e.low() <= PLANTED[which] && PLANTED[which] <= e.high() ? 1 : 0;
    }
    return held;
  }

  /** The share of 60 seeds lies within three standard deviations of 95 %. */
  @Test
  void intervalsHoldThePlantedValueInAboutNineteenOfTwentyFits() {
    for (int which = 0; which < 3; which++) {
      assertThat(held(CalibrationTest::bent, 60, which)).isBetween(52, 60);
    }
  }

  @Tag("long")
  @Test
  void intervalsHoldThePlantedValueIn930To970OfAThousandSeeds() {
    for (int which = 0; which < 3; which++) {
      int held = held(CalibrationTest::bent, 1000, which);
      System.err.println(WickFit.PARAMETERS.get(which).name() + ": " + held + " of 1000");
      assertThat(held).isBetween(930, 970);
    }
  }

  @Test
  void exactReadingsGiveThePlantedValuesBack() {
    double[] truth = bent(PLANTED);
    Fitted fitted = Calibration.fit(CalibrationTest::bent, WickFit.PARAMETERS, truth, SPREAD);
    assertThat(fitted.misfit()).isLessThan(1e-8);
    for (int i = 0; i < 3; i++) {
      assertThat(fitted.values()[i]).isCloseTo(PLANTED[i], within(1e-3 * PLANTED[i]));
    }
  }

  @Test
  void twoParametersThatOnlyActAsASumCannotBeToldApart() {
    List<Parameter> two = List.of(new Parameter("a", 0, 10), new Parameter("b", 0, 10));
    Function<double[], double[]> sum = p -> new double[] {p[0] + p[1], p[0] + p[1]};
    Fitted fitted = Calibration.fit(sum, two, new double[] {10, 10.1}, new double[] {.1, .1});
    assertThat(fitted.estimates()).allMatch(Estimate::cannotBeToldApart);
    assertThat(fitted.values()[0] + fitted.values()[1]).isCloseTo(10.05, within(.01));
  }

  @Test
  void fewerReadingsThanParametersAreRefused() {
    assertThatThrownBy(
            () ->
                Calibration.fit(
                    CalibrationTest::bent, WickFit.PARAMETERS, new double[2], new double[2]))
        .isInstanceOf(OutOfRange.class);
  }

  /** A simulated candle is read with 0.4 mm and 0.4 K, fitted, and predicted at a later hour. */
  @Test
  void aCandleOfKnownPropertiesIsFittedFromItsReadings() {
    Burn candle = candle();
    Function<double[], double[]> surface = WickFit.surface(candle, WANTS);
    double[] truth = WickFit.simulate(candle, WANTS, PLANTED);
    double[] near = surface.apply(PLANTED);
    for (int i = 0; i < truth.length; i++) {
      assertThat(near[i]).as("surface, reading " + i).isCloseTo(truth[i], within(1.5));
    }
    Fitted fitted = Calibration.fit(surface, WickFit.PARAMETERS, truth, spread(1.0));
    Estimate root = fitted.estimates().get(0);
    assertThat(root.low()).isLessThan(PLANTED[0]);
    assertThat(root.high()).isGreaterThan(PLANTED[0]);
    Estimate radiative = fitted.estimates().get(1);
    assertThat(radiative.low()).isLessThan(PLANTED[1]);
    assertThat(radiative.high()).isGreaterThan(PLANTED[1]);
  }

  private static double[] spread(double each) {
    double[] spread = new double[WANTS.size()];
    Arrays.fill(spread, each);
    return spread;
  }
}

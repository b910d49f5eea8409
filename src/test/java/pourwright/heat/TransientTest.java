package pourwright.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.special.BesselJ;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Warming and cooling without melting, by the candle's solver, beside the closed forms. */
class TransientTest {
  private static final Melting NOTHING = new Melting(500, 501, 1e5, 1000, 1000, 1, 1, 1000);

  /** A body of one stuff: its conductivity and heat capacity a volume, cells and their size. */
  private record Body(double k, double rhoC, int nx, int nz, double cell, boolean round) {

    Box box() {
      Box box = new Box(new int[] {nx, 1, nz}, NOTHING.from(0), 1, 1);
      for (int z = 0; z < nz; z++) {
        for (int x = 0; x < nx; x++) {
          int i = box.at(x, 0);
          double across = round ? Math.PI * (2 * x + 1) * cell : 1;
          box.conductivity[z][i] = k;
          box.heatCapacity[z][i] = rhoC;
          box.volume[z][i] = across * cell * cell;
          box.faceX[z][i] = x + 1 < nx ? 2 * (round ? 2 * Math.PI * (x + 1) * cell : 1) : 0;
          box.faceZ[z][i] = z + 1 < nz ? 2 * across : 0;
          box.enthalpy[z][i] = rhoC;
        }
      }
      return box;
    }
  }

  private static void run(Box box, double seconds) {
    try (Stepper stepper = new Stepper(box, Stepper.Precision.DOUBLE, 1)) {
      int steps = (int) Math.ceil(seconds / (10 * stepper.explicitLimitS()));
      for (int i = 0; i < steps; i++) {
        stepper.advance(seconds / steps);
      }
    }
  }

  /** First root and its coefficient; textbook table of one-term solutions, handbook 4.1. */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.4417, 1.0246, 0.3111, 1.0161",
    "1, 1.2558, 1.2071, 0.8603, 1.1191",
    "10, 2.1795, 1.5677, 1.4289, 1.2620"
  })
  void theOneTermCoefficientsAreThoseOfTheTable(
      double biot, double cylinder, double c, double wall, double w) {
    assertThat(Series.cylinderRoot(biot, 1)).isCloseTo(cylinder, within(1e-4));
    assertThat(Series.cylinderFactor(Series.cylinderRoot(biot, 1))).isCloseTo(c, within(1e-4));
    assertThat(Series.wallRoot(biot, 1)).isCloseTo(wall, within(1e-4));
    assertThat(Series.wallFactor(Series.wallRoot(biot, 1))).isCloseTo(w, within(1e-4));
  }

  /** Worked out by the series of {@link Series}; solid wax, h 10 W/m²K. */
  @ParameterizedTest
  @CsvSource({"3600", "7200"})
  void aSlabAndACylinderCoolAsTheirSeriesSay(double seconds) {
    double k = .24;
    double rhoC = 900 * 2200;
    Body cylinder = new Body(k, rhoC, 20, 1, .0375 / 20, true);
    Box box = cylinder.box();
    lose(box, 0, box.at(19, 0), 10 * 2 * Math.PI * .0375 * cylinder.cell, .0375 / 40 / k * 10);
    run(box, seconds);
    double exact = Series.cylinder(10 * .0375 / k, k / rhoC * seconds / (.0375 * .0375), 0);
    assertThat(centre(box, 0)).isCloseTo(exact, withPercentage(.5));
    Body slab = new Body(k, rhoC, 20, 1, .04 / 20, false);
    box = slab.box();
    lose(box, 0, box.at(19, 0), 10 * slab.cell, .04 / 40 / k * 10);
    run(box, seconds);
    exact = Series.wall(10 * .04 / k, k / rhoC * seconds / (.04 * .04), 0);
    assertThat(centre(box, 0)).isCloseTo(exact, withPercentage(.5));
  }

  private static void lose(Box box, int z, int i, double filmWattsPerK, double biotOfHalfCell) {
    box.loss[z][i] += filmWattsPerK / (1 + biotOfHalfCell);
  }

  /** At the middle of the first cell, corrected to the axis by the parabola through two cells. */
  private static double centre(Box box, int z) {
    double a = box.kelvin(z, box.at(0, 0));
    double b = box.kelvin(z, box.at(1, 0));
    return a - (b - a) / 8;
  }

  /** Worked out as wall times cylinder; handbook of burning, 4.1 and check value 18. */
  @ParameterizedTest
  @CsvSource({"3600, 0.5671", "7200, 0.2189"})
  void aFiniteCylinderOfWaxCoolsAsTheProductOfWallAndCylinder(double seconds, double theta) {
    double k = .24;
    double cell = .0025;
    Body body = new Body(k, 900 * 2200, 15, 16, cell, true);
    Box box = body.box();
    double half = cell / 2 / k * 10;
    for (int z = 0; z < 16; z++) {
      lose(box, z, box.at(14, 0), 10 * 2 * Math.PI * .0375 * cell, half);
    }
    for (int x = 0; x < 15; x++) {
      lose(box, 15, box.at(x, 0), 10 * Math.PI * (2 * x + 1) * cell * cell, half);
    }
    run(box, seconds);
    double low = centre(box, 0);
    double up = centre(box, 1);
    assertThat(low - (up - low) / 8).isCloseTo(theta, withPercentage(.5));
  }

  /** Carslaw and Jaeger, Conduction of Heat in Solids, 2.9: constant flux; check value 19. */
  @Test
  void aSemiInfiniteBodyUnderConstantFluxWarmsByTheRootOfTime() {
    Body body = new Body(1, 2e6, 400, 1, .0005, false);
    Box box = body.box();
    java.util.Arrays.stream(box.enthalpy).forEach(p -> java.util.Arrays.fill(p, 0));
    box.source[0][box.at(0, 0)] = 1000 * body.cell;
    run(box, 600);
    double surface = box.kelvin(0, box.at(0, 0)) + 1000 * .00025;
    assertThat(surface).isCloseTo(19.544, withPercentage(1));
    assertThat(between(box, .01)).isCloseTo(11.151, withPercentage(1));
  }

  /** Carslaw and Jaeger 2.7: film coefficient 10, 600 s; check value 20. */
  @Test
  void aSemiInfiniteBodyCoolsThroughAFilm() {
    Body body = new Body(1, 2e6, 400, 1, .0005, false);
    Box box = body.box();
    lose(box, 0, box.at(0, 0), 10 * body.cell, .00025 * 10);
    run(box, 600);
    double flux = 10 / (1 + .0025) * box.kelvin(0, box.at(0, 0));
    assertThat(1 - flux / 10).isCloseTo(.16894, withPercentage(1));
    assertThat(1 - between(box, .01)).isCloseTo(.09816, withPercentage(1));
    double x = .01 / (2 * Math.sqrt(5e-7 * 600));
    double hk = 10 * Math.sqrt(5e-7 * 600);
    double exact = Erf.erfc(x) - Math.exp(10 * .01 + hk * hk) * Erf.erfc(x + hk);
    assertThat(exact).isCloseTo(.09816, within(1e-5));
  }

  private static double between(Box box, double depth) {
    int right = (int) Math.round(depth / .0005);
    return (box.kelvin(0, box.at(right - 1, 0)) + box.kelvin(0, box.at(right, 0))) / 2;
  }

  /** Yovanovich's explicit example and the series; handbook of burning, check value 16. */
  @Test
  void yovanovichsCylinder() {
    assertThat(Series.cylinder(.1, .3, 0)).isCloseTo(.96595, within(1e-4));
    double root = Series.cylinderRoot(.1, 1);
    double one = Series.cylinderFactor(root) * Math.exp(-root * root * .3);
    assertThat(one).isCloseTo(.96634, within(1e-4));
  }

  /** Explicit limit at 1 mm in stuff of 6.75e-7 m²/s, in the plane; check value 34. */
  @Test
  void theExplicitLimitIsTheTextbooks() {
    Body body = new Body(1.35, 2e6, 9, 9, .001, false);
    assertThat(body.box().explicitLimitS(4)).isCloseTo(.370, within(.001));
  }

  /** Closed forms of the transients, as series. */
  private static final class Series {
    static double cylinderRoot(double biot, int n) {
      DoubleUnaryOperator f = z -> z * BesselJ.value(1, z) - biot * BesselJ.value(0, z);
      double low = 1e-9;
      double found = 0;
      for (int i = 0; i < n; low = found + 1e-6, i++) {
        double high = low + .05;
        while (f.applyAsDouble(high) * f.applyAsDouble(low) > 0) {
          high += .05;
        }
        found = Special.root(f, low, high);
      }
      return found;
    }

    static double cylinderFactor(double z) {
      double j0 = BesselJ.value(0, z);
      double j1 = BesselJ.value(1, z);
      return 2 / z * j1 / (j0 * j0 + j1 * j1);
    }

    static double cylinder(double biot, double fourier, double at) {
      double sum = 0;
      for (int n = 1; n <= 8; n++) {
        double z = cylinderRoot(biot, n);
        sum += cylinderFactor(z) * Math.exp(-z * z * fourier) * BesselJ.value(0, z * at);
      }
      return sum;
    }

    static double wallRoot(double biot, int n) {
      double low = (n - 1) * Math.PI + 1e-9;
      return Special.root(z -> z * Math.sin(z) - biot * Math.cos(z), low, low + Math.PI / 2 - 1e-8);
    }

    static double wallFactor(double z) {
      return 4 * Math.sin(z) / (2 * z + Math.sin(2 * z));
    }

    static double wall(double biot, double fourier, double at) {
      double sum = 0;
      for (int n = 1; n <= 8; n++) {
        double z = wallRoot(biot, n);
        sum += wallFactor(z) * Math.exp(-z * z * fourier) * Math.cos(z * at);
      }
      return sum;
    }
  }
}

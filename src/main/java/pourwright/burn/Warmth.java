package pourwright.burn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Wall and underside of a simulated candle in degrees, from a calibration on tests of its vessel's
 * family: each a likely value with a band, and only where at least three tests have read the wall.
 *
 * <p>The band holds every set of wick-root heat, radiative fraction and stirring that the readings
 * do not rule out (95 %, chi-square of three degrees; more where the model does not follow the
 * readings), and on both sides twice what the model was off when it foretold later tests, at least
 * 5 K, the handbook's judgement for a candle that was calibrated on three burns. An underside that
 * was never read gets 10 K, its judgement for an uncalibrated one. Never a limit, never a verdict.
 *
 * @param wall outer wall at its warmest
 * @param base underside at its warmest
 * @param tests how many tests have read the wall
 */
public record Warmth(Told wall, Told base, int tests) {
  /** Tests that have to have read the wall before a temperature is told. */
  public static final int TESTS_MIN = 3;

  /** 95 % of chi-square with three degrees of freedom. */
  private static final double CHI_SQUARE_95 = 7.814728;

  private static final double CALIBRATED_K = 5;
  private static final double UNCALIBRATED_K = 10;
  private static final int STEPS = 12;
  private static final double GRID_MM = 3.75;

  /**
   * A temperature with its band.
   *
   * @param likelyC by the best fit, °C
   * @param lowC lower end of the band
   * @param highC upper end
   */
  public record Told(double likelyC, double lowC, double highC) {}

  /** How many of some tests have read the outer wall. */
  public static int wallTests(List<List<TestFit.Got>> tests) {
    return (int) tests.stream().filter(t -> has(t, WickFit.Kind.WALL_C)).count();
  }

  private static boolean has(List<TestFit.Got> test, WickFit.Kind kind) {
    return test.stream().anyMatch(g -> g.want().kind() == kind);
  }

  /**
   * Tells the warmest of wall and underside over a burn.
   *
   * @param read the tests of a round candle with one wick, at its weighed burn rate
   * @param asked a candle of the same family, round with one wick
   * @return nothing where fewer than three tests have read the wall
   */
  public static Optional<Warmth> of(TestFit.Laid read, Burn asked) {
    int count = wallTests(read.tests());
    if (count < TESTS_MIN) {
      return Optional.empty();
    }
    List<TestFit.Got> seen = read.seen(read.tests().size());
    double[] best = read.fit(read.tests().size()).values();
    double hours = asked.fineness().hours();
    Function<double[], double[]> warm =
        WickFit.surface(
            coarse(asked),
            List.of(
                new WickFit.Want(hours, WickFit.Kind.WALL_C),
                new WickFit.Want(hours, WickFit.Kind.BASE_C)));
    double least = misfit(read.all().apply(best), seen);
    double free = Math.max(1, seen.size() - WickFit.PARAMETERS.size());
    double most = least + CHI_SQUARE_95 * Math.max(1, least / free);
    double[] likely = warm.apply(best);
    double[] low = likely.clone();
    double[] high = likely.clone();
    for (int n = 0; n < (STEPS + 1) * (STEPS + 1) * (STEPS + 1); n++) {
      double[] at = point(n);
      if (misfit(read.all().apply(at), seen) <= most) {
        double[] said = warm.apply(at);
        for (int i = 0; i < said.length; i++) {
          low[i] = Math.min(low[i], said[i]);
          high[i] = Math.max(high[i], said[i]);
        }
      }
    }
    List<TestFit.Foretold> foretold = new ArrayList<>();
    read.running().forEach(foretold::addAll);
    double wall = beside(TestFit.score(foretold, WickFit.Kind.WALL_C));
    double base = beside(TestFit.score(foretold, WickFit.Kind.BASE_C));
    return Optional.of(
        new Warmth(
            told(asked, likely[0], low[0] - wall, high[0] + wall),
            told(asked, likely[1], low[1] - base, high[1] + base),
            count));
  }

  /** Nothing that a flame warms is colder than its room. */
  private static Told told(Burn asked, double likely, double low, double high) {
    double room = asked.room().celsius();
    return new Told(Math.max(room, likely), Math.max(room, low), Math.max(room, high));
  }

  /** Kelvin on either side for what the model was off; without a score the uncalibrated ones. */
  private static double beside(double score) {
    return Double.isNaN(score) ? UNCALIBRATED_K : Math.max(CALIBRATED_K, 2 * score);
  }

  private static double misfit(double[] said, List<TestFit.Got> seen) {
    double sum = 0;
    for (int i = 0; i < seen.size(); i++) {
      TestFit.Got got = seen.get(i);
      double off = (said[i] - got.value()) / TestFit.spread(got.want().kind());
      sum += off * off;
    }
    return sum;
  }

  /** One of the points of a lattice over the parameters' bounds. */
  private static double[] point(int n) {
    double[] at = new double[WickFit.PARAMETERS.size()];
    int rest = n;
    for (int i = 0; i < at.length; i++) {
      Calibration.Parameter p = WickFit.PARAMETERS.get(i);
      at[i] = p.low() + (p.high() - p.low()) * (rest % (STEPS + 1)) / STEPS;
      rest /= STEPS + 1;
    }
    return at;
  }

  /** The same burn in cells that are fine enough for a wall's temperature. */
  private static Burn coarse(Burn burn) {
    return new Burn(
        burn.vessel(),
        burn.wax(),
        burn.across(),
        burn.upright(),
        burn.wicks(),
        burn.flame(),
        burn.room(),
        Burn.Fineness.of(burn.fineness().hours(), GRID_MM, 900, Burn.Solver.AXISYMMETRIC)
            .withSharp(true),
        burn.contact());
  }
}

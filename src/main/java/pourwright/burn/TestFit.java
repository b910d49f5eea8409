package pourwright.burn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * A candle's simulation fitted to what its tests read, and how well it foretold a later test that
 * it had not seen: the model's score, good or bad.
 *
 * @param fitted wick-root heat, radiative fraction and enhancement with their intervals
 * @param foretold each reading of the later test beside what the fit says of it
 */
public record TestFit(Calibration.Fitted fitted, List<Foretold> foretold) {

  /** House: a pool's half width is read to 1.5 mm, its depth to 2 mm, the wall to 1.5 K. */
  private static final double POOL_MM = 1.5;

  private static final double DEPTH_MM = 2;
  private static final double WALL_K = 1.5;

  /** Copies the list. */
  public TestFit {
    foretold = List.copyOf(foretold);
  }

  /** A reading of a test. */
  public record Got(WickFit.Want want, double value) {}

  /** A reading that the fit had not seen. */
  public record Foretold(Got got, double said) {}

  /**
   * Fits to some readings and is held against others.
   *
   * @param burn the candle, its burn rate weighed
   * @param seen readings to fit to, at least three
   * @param later readings of a later test; may be empty
   * @throws pourwright.quantity.OutOfRange with too few readings
   */
  public static TestFit of(Burn burn, List<Got> seen, List<Got> later) {
    return lay(burn, List.of(seen, later)).latest();
  }

  /**
   * The model's running score: each test but the first foretold from all before it.
   *
   * @param burn the candle, its burn rate weighed
   * @param tests readings of each test, the oldest first
   * @return for each test what was foretold of it; nothing where those before it had fewer than
   *     four readings, and for the first
   */
  public static List<List<Foretold>> running(Burn burn, List<List<Got>> tests) {
    return lay(burn, tests).running();
  }

  /** Simulates a candle once for all that its tests read; the rest costs nothing more. */
  public static Laid lay(Burn burn, List<List<Got>> tests) {
    List<WickFit.Want> wants = new ArrayList<>();
    for (List<Got> test : tests) {
      fitted(test).forEach(g -> wants.add(g.want));
    }
    tests.forEach(t -> t.forEach(g -> wants.add(g.want)));
    return new Laid(tests, WickFit.surface(burn, wants));
  }

  /**
   * A candle's tests with what the simulation says of each reading at any parameters.
   *
   * @param tests readings of each test, the oldest first
   * @param all from parameters to the fitted readings of each test, then to all of them
   */
  public record Laid(List<List<Got>> tests, Function<double[], double[]> all) {
    /** Copies the lists. */
    public Laid {
      tests = tests.stream().map(List::copyOf).toList();
    }

    /**
     * The latest test foretold from all before it; a single test is fitted alone.
     *
     * @throws pourwright.quantity.OutOfRange with too few readings
     */
    public TestFit latest() {
      int last = Math.min(tests.size(), Math.max(1, tests.size() - 1));
      Calibration.Fitted fitted = fit(last);
      return new TestFit(fitted, last < tests.size() ? foretold(fitted.values(), last) : List.of());
    }

    /** As {@link TestFit#running(Burn, List)} says. */
    public List<List<Foretold>> running() {
      List<List<Foretold>> running = new ArrayList<>();
      for (int test = 0; test < tests.size(); test++) {
        boolean enough = seen(test).size() > WickFit.PARAMETERS.size();
        running.add(enough ? foretold(fit(test).values(), test) : List.of());
      }
      return running;
    }

    /** The readings of the first so many tests that are fitted to. */
    List<Got> seen(int count) {
      return tests.subList(0, count).stream().flatMap(t -> fitted(t).stream()).toList();
    }

    /** A fit to the first so many tests. */
    Calibration.Fitted fit(int count) {
      List<Got> seen = seen(count);
      return Calibration.fit(
          p -> Arrays.copyOf(all.apply(p), seen.size()),
          WickFit.PARAMETERS,
          seen.stream().mapToDouble(Got::value).toArray(),
          seen.stream().mapToDouble(g -> spread(g.want.kind())).toArray());
    }

    private List<Foretold> foretold(double[] parameters, int test) {
      int at = seen(tests.size()).size();
      for (List<Got> before : tests.subList(0, test)) {
        at += before.size();
      }
      double[] said = all.apply(parameters);
      List<Foretold> foretold = new ArrayList<>();
      for (Got got : tests.get(test)) {
        foretold.add(new Foretold(got, said[at++]));
      }
      return foretold;
    }
  }

  /** The readings that are fitted to: the underside's tell of the table it stood on. */
  static List<Got> fitted(List<Got> readings) {
    return readings.stream().filter(g -> g.want.kind() != WickFit.Kind.BASE_C).toList();
  }

  static double spread(WickFit.Kind kind) {
    return switch (kind) {
      case POOL_RADIUS_MM -> POOL_MM;
      case POOL_DEPTH_MM -> DEPTH_MM;
      case WALL_C, BASE_C -> WALL_K;
    };
  }

  /** Root of the mean square of what was foretold less what was read; NaN without a reading. */
  public double score(WickFit.Kind kind) {
    return score(foretold, kind);
  }

  /** The same of any readings that were foretold. */
  public static double score(List<Foretold> foretold, WickFit.Kind kind) {
    return Math.sqrt(
        foretold.stream()
            .filter(f -> f.got.want.kind() == kind)
            .mapToDouble(f -> Math.pow(f.said - f.got.value, 2))
            .average()
            .orElse(Double.NaN));
  }
}

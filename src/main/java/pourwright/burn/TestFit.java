package pourwright.burn;

import java.util.ArrayList;
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
    List<WickFit.Want> wants = new ArrayList<>();
    seen.forEach(g -> wants.add(g.want));
    later.forEach(g -> wants.add(g.want));
    Function<double[], double[]> all = WickFit.surface(burn, wants);
    int n = seen.size();
    Calibration.Fitted fitted =
        Calibration.fit(
            p -> java.util.Arrays.copyOf(all.apply(p), n),
            WickFit.PARAMETERS,
            seen.stream().mapToDouble(Got::value).toArray(),
            seen.stream().mapToDouble(g -> spread(g.want.kind())).toArray());
    double[] said = all.apply(fitted.values());
    List<Foretold> foretold = new ArrayList<>();
    for (int i = 0; i < later.size(); i++) {
      foretold.add(new Foretold(later.get(i), said[n + i]));
    }
    return new TestFit(fitted, foretold);
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
    List<WickFit.Want> wants = new ArrayList<>();
    tests.forEach(t -> t.forEach(g -> wants.add(g.want)));
    Function<double[], double[]> all = WickFit.surface(burn, wants);
    List<List<Foretold>> running = new ArrayList<>();
    List<Got> seen = new ArrayList<>();
    for (List<Got> test : tests) {
      List<Foretold> foretold = new ArrayList<>();
      int n = seen.size();
      if (n > WickFit.PARAMETERS.size()) {
        double[] said =
            all.apply(
                Calibration.fit(
                        p -> java.util.Arrays.copyOf(all.apply(p), n),
                        WickFit.PARAMETERS,
                        seen.stream().mapToDouble(Got::value).toArray(),
                        seen.stream().mapToDouble(g -> spread(g.want.kind())).toArray())
                    .values());
        for (int i = 0; i < test.size(); i++) {
          foretold.add(new Foretold(test.get(i), said[n + i]));
        }
      }
      running.add(foretold);
      seen.addAll(test);
    }
    return running;
  }

  private static double spread(WickFit.Kind kind) {
    return switch (kind) {
      case POOL_RADIUS_MM -> POOL_MM;
      case POOL_DEPTH_MM -> DEPTH_MM;
      case WALL_C -> WALL_K;
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

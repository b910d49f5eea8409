package pourwright.burn;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Fits wick-root heat, radiative fraction and the liquid's enhancement of a candle to what its
 * tests read. The burn rate is weighed, never fitted. A response surface of second order is laid
 * through a factorial of 27 simulations first, so that fit and intervals cost nothing more.
 *
 * <p>Source of the surface: Box and Wilson, J. Royal Statistical Society B 13 (1951) 1. Where the
 * candle is at its limits (the pool is full) readings stop to answer and intervals open.
 */
public final class WickFit {
  /** What is fitted, with the bounds of docs/models/burn.md. */
  public static final List<Calibration.Parameter> PARAMETERS =
      List.of(
          new Calibration.Parameter("wick_root_w", 1, 7),
          new Calibration.Parameter("radiative_fraction", 0.08, 0.32),
          new Calibration.Parameter("liquid_enhancement_horizontal", 10, 60));

  private static final int TERMS = 10;

  private WickFit() {}

  /**
   * One reading of a test.
   *
   * @param hours since lighting; must be a recorded moment of the burn
   * @param kind what was read
   */
  public record Want(double hours, Kind kind) {}

  /** What can be fitted to. */
  public enum Kind {
    /** Half the mean of the pool's length and width, mm. */
    POOL_RADIUS_MM,
    /** Melted depth at the wick, mm. */
    POOL_DEPTH_MM,
    /** Warmest mean round the outer wall so far, °C. */
    WALL_C,
    /** Warmest of the underside so far, °C; foretold and scored, never fitted to. */
    BASE_C
  }

  /** The simulation's answers at these parameters. */
  public static double[] simulate(Burn burn, List<Want> wants, double[] parameters) {
    Flame flame = burn.flame();
    Burn set =
        new Burn(
            burn.vessel(),
            burn.wax(),
            parameters[2],
            burn.upright(),
            burn.wicks(),
            new Flame(
                flame.heatOfCombustion(),
                parameters[1],
                flame.absorbed(),
                flame.pointMm(),
                parameters[0],
                flame.rootDepthMm()),
            burn.room(),
            burn.fineness(),
            burn.contact());
    BurnResult result = Simulation.run(set);
    return wants.stream().mapToDouble(w -> value(result, w)).toArray();
  }

  private static double value(BurnResult result, Want want) {
    BurnResult.Pool nearest = result.pool().get(0);
    for (BurnResult.Pool pool : result.pool()) {
      if (Math.abs(pool.hours() - want.hours) < Math.abs(nearest.hours() - want.hours)) {
        nearest = pool;
      }
    }
    return switch (want.kind) {
      case POOL_RADIUS_MM -> nearest.equivalentRadiusMm();
      case POOL_DEPTH_MM -> nearest.depthMm();
      case WALL_C -> nearest.wallC();
      case BASE_C -> nearest.baseC();
    };
  }

  /** A second-order surface through 27 simulations: from parameters to what would be read. */
  public static Function<double[], double[]> surface(Burn burn, List<Want> wants) {
    List<double[]> at = new ArrayList<>();
    List<double[]> said = new ArrayList<>();
    for (int n = 0; n < 27; n++) {
      double[] unit = {n % 3 - 1, n / 3 % 3 - 1, n / 9 - 1};
      at.add(terms(unit));
      said.add(simulate(burn, wants, natural(unit)));
    }
    double[][] weights = new double[wants.size()][];
    for (int w = 0; w < weights.length; w++) {
      int want = w;
      weights[w] = regress(at, said.stream().mapToDouble(s -> s[want]).toArray());
    }
    return parameters -> {
      double[] terms = terms(unit(parameters));
      double[] values = new double[weights.length];
      for (int w = 0; w < values.length; w++) {
        for (int t = 0; t < TERMS; t++) {
          values[w] += weights[w][t] * terms[t];
        }
      }
      return values;
    };
  }

  private static double[] natural(double[] unit) {
    double[] v = new double[unit.length];
    for (int i = 0; i < v.length; i++) {
      Calibration.Parameter p = PARAMETERS.get(i);
      v[i] = 0.5 * (p.low() + p.high()) + 0.5 * unit[i] * (p.high() - p.low());
    }
    return v;
  }

  private static double[] unit(double[] natural) {
    double[] u = new double[natural.length];
    for (int i = 0; i < u.length; i++) {
      Calibration.Parameter p = PARAMETERS.get(i);
      u[i] = (2 * natural[i] - p.low() - p.high()) / (p.high() - p.low());
    }
    return u;
  }

  private static double[] terms(double[] u) {
    return new double[] {
      1,
      u[0],
      u[1],
      u[2],
      u[0] * u[0],
      u[1] * u[1],
      u[2] * u[2],
      u[0] * u[1],
      u[0] * u[2],
      u[1] * u[2]
    };
  }

  private static double[] regress(List<double[]> at, double[] values) {
    org.hipparchus.stat.regression.OLSMultipleLinearRegression fit =
        new org.hipparchus.stat.regression.OLSMultipleLinearRegression();
    fit.setNoIntercept(true);
    fit.newSampleData(values, at.toArray(double[][]::new));
    return fit.estimateRegressionParameters();
  }
}

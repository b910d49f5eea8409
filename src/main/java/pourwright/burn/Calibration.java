package pourwright.burn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;

/**
 * Fits a model's parameters to readings by least squares, each residual over its own uncertainty,
 * with an interval for each parameter by profile likelihood: the values at which the best fit of
 * all other parameters is worse by no more than 3.841 (chi-square, one degree, 95 %). An interval
 * that runs into a bound is said to be open: the readings cannot tell that parameter from the
 * others.
 *
 * <p>Source: Venzon and Moolgavkar, Applied Statistics 37 (1988) 87 (profile likelihood);
 * Marquardt, J. SIAM 11 (1963) 431 (the fit). Residuals are taken as normal with known spread.
 */
public final class Calibration {
  private static final double CHI_SQUARE_95 = 3.841459;
  private static final int FIT_STEPS = 60;
  private static final int HALVINGS = 40;
  private static final double NUDGE = 1e-4;

  private final Function<double[], double[]> model;
  private final List<Parameter> parameters;
  private final double[] read;
  private final double[] spread;

  private Calibration(
      Function<double[], double[]> model,
      List<Parameter> parameters,
      double[] read,
      double[] spread) {
    this.model = model;
    this.parameters = List.copyOf(parameters);
    this.read = read.clone();
    this.spread = spread.clone();
  }

  /** A parameter with the bounds that it is believed to lie in. */
  public record Parameter(String name, double low, double high) {}

  /**
   * What the readings say of one parameter.
   *
   * @param value best fit
   * @param low lower end of the 95 % interval, the bound where it is open
   * @param high upper end
   * @param openBelow true when the readings set no lower end within the bounds
   * @param openAbove true when they set no upper end
   */
  public record Estimate(
      String name, double value, double low, double high, boolean openBelow, boolean openAbove) {

    /** True when the readings cannot tell this parameter from the others. */
    public boolean cannotBeToldApart() {
      return openBelow && openAbove;
    }
  }

  /**
   * A finished fit.
   *
   * @param estimates one for each parameter
   * @param misfit sum of squared residuals over their spreads; near the number of readings less
   *     that of parameters when the model fits
   */
  public record Fitted(List<Estimate> estimates, double misfit) {

    /** Best values in the parameters' order. */
    public double[] values() {
      return estimates.stream().mapToDouble(Estimate::value).toArray();
    }
  }

  /**
   * Fits.
   *
   * @param model from parameters to what would be read; pure
   * @param parameters with bounds; the fit starts in their middle
   * @param read what was read
   * @param spread standard uncertainty of each reading, greater than zero
   * @throws OutOfRange when there are fewer readings than parameters
   */
  public static Fitted fit(
      Function<double[], double[]> model,
      List<Parameter> parameters,
      double[] read,
      double[] spread) {
    if (read.length < parameters.size() || read.length != spread.length) {
      throw new OutOfRange(
          "readings",
          Counted.of(read.length, "reading", "readings")
              + " for "
              + Counted.of(parameters.size(), "parameter", "parameters"),
          "read at least as many as are fitted, each with its uncertainty");
    }
    return new Calibration(model, parameters, read, spread).fit();
  }

  private Fitted fit() {
    double[] middle = parameters.stream().mapToDouble(p -> 0.5 * (p.low + p.high)).toArray();
    double[] best = minimise(middle, -1);
    double least = misfit(best);
    List<Estimate> estimates = new ArrayList<>();
    for (int i = 0; i < best.length; i++) {
      Parameter p = parameters.get(i);
      double low = end(best, i, p.low, least);
      double high = end(best, i, p.high, least);
      estimates.add(new Estimate(p.name, best[i], low, high, low == p.low, high == p.high));
    }
    return new Fitted(estimates, least);
  }

  private double[] residuals(double[] at) {
    double[] said = model.apply(at);
    double[] r = new double[read.length];
    for (int i = 0; i < r.length; i++) {
      r[i] = (said[i] - read[i]) / spread[i];
    }
    return r;
  }

  private double misfit(double[] at) {
    return Arrays.stream(residuals(at)).map(r -> r * r).sum();
  }

  /** Best fit from a start, one parameter held where {@code held} is not negative. */
  private double[] minimise(double[] start, int held) {
    double[] at = start.clone();
    double now = misfit(at);
    double damping = 1e-3;
    for (int step = 0; step < FIT_STEPS && damping < 1e9; step++) {
      double[] next = step(at, held, damping);
      double then = misfit(next);
      if (then <= now) {
        boolean done = now - then < 1e-10 * (1 + now);
        at = next;
        now = then;
        damping = Math.max(1e-9, damping / 5);
        if (done) {
          break;
        }
      } else {
        damping *= 4;
      }
    }
    return at;
  }

  private double[] step(double[] at, int held, double damping) {
    int n = at.length;
    double[] r = residuals(at);
    double[][] slopes = new double[n][];
    for (int i = 0; i < n; i++) {
      slopes[i] = i == held ? new double[r.length] : slope(at, i, r);
    }
    double[][] normal = new double[n][n];
    double[] right = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        normal[i][j] = dot(slopes[i], slopes[j]);
      }
      right[i] = -dot(slopes[i], r);
      normal[i][i] = i == held ? 1 : normal[i][i] * (1 + damping) + 1e-12;
    }
    double[] move = solve(normal, right);
    double[] next = at.clone();
    for (int i = 0; i < n; i++) {
      double width = parameters.get(i).high - parameters.get(i).low;
      next[i] = clamp(i, at[i] + move[i] * width);
    }
    return next;
  }

  /** Change of the residuals for a move of a parameter over its whole width. */
  private double[] slope(double[] at, int i, double[] r) {
    double width = parameters.get(i).high - parameters.get(i).low;
    double nudge = NUDGE * width;
    double[] moved = at.clone();
    boolean up = at[i] + nudge <= parameters.get(i).high;
    moved[i] += up ? nudge : -nudge;
    double[] there = residuals(moved);
    double[] slope = new double[r.length];
    for (int k = 0; k < r.length; k++) {
      slope[k] = (there[k] - r[k]) / (up ? NUDGE : -NUDGE);
    }
    return slope;
  }

  private double clamp(int i, double value) {
    return Math.max(parameters.get(i).low, Math.min(parameters.get(i).high, value));
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** Gauss with pivots; the matrices here are at most a handful of rows. */
  private static double[] solve(double[][] m, double[] b) {
    int n = b.length;
    for (int c = 0; c < n; c++) {
      int pivot = c;
      for (int r = c + 1; r < n; r++) {
        pivot = Math.abs(m[r][c]) > Math.abs(m[pivot][c]) ? r : pivot;
      }
      double[] row = m[c];
      m[c] = m[pivot];
      m[pivot] = row;
      double v = b[c];
      b[c] = b[pivot];
      b[pivot] = v;
      for (int r = c + 1; r < n; r++) {
        double f = m[c][c] == 0 ? 0 : m[r][c] / m[c][c];
        for (int k = c; k < n; k++) {
          m[r][k] -= f * m[c][k];
        }
        b[r] -= f * b[c];
      }
    }
    double[] x = new double[n];
    for (int r = n - 1; r >= 0; r--) {
      double sum = b[r];
      for (int k = r + 1; k < n; k++) {
        sum -= m[r][k] * x[k];
      }
      x[r] = m[r][r] == 0 ? 0 : sum / m[r][r];
    }
    return x;
  }

  /** Where the profile crosses the threshold on the way to a bound; the bound when it does not. */
  private double end(double[] best, int i, double bound, double least) {
    double limit = least + CHI_SQUARE_95;
    double[] at = best.clone();
    at[i] = bound;
    if (misfit(minimise(at, i)) <= limit) {
      return bound;
    }
    double inside = best[i];
    double outside = bound;
    double[] warm = best.clone();
    for (int k = 0; k < HALVINGS; k++) {
      double middle = 0.5 * (inside + outside);
      double[] from = warm.clone();
      from[i] = middle;
      double[] fitted = minimise(from, i);
      if (misfit(fitted) <= limit) {
        inside = middle;
        warm = fitted;
      } else {
        outside = middle;
      }
    }
    return 0.5 * (inside + outside);
  }
}

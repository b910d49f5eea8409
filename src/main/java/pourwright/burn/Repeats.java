package pourwright.burn;

import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;
import pourwright.quantity.Check;

/**
 * The same thing measured on several candles: mean and two-sided 95 % interval of the mean by
 * Student's t. One candle has a value and no interval.
 *
 * <p>Sources: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2 (confidence limits for the
 * mean) and 1.3.5.3 (difference of two means with unequal variances, after Welch, Biometrika 34
 * (1947) 28).
 *
 * @param values as measured, one a candle, at least one
 * @param mean their mean
 * @param low lower end of the interval, NaN for one candle
 * @param high upper end
 */
public record Repeats(List<Double> values, double mean, double low, double high) {
  private static final double UPPER = 0.975;

  /** Copies the list. */
  public Repeats {
    values = List.copyOf(values);
  }

  /** Of these values; nothing of none. */
  public static Optional<Repeats> of(List<Double> values) {
    int n = values.size();
    if (n == 0) {
      return Optional.empty();
    }
    values.forEach(v -> Check.between("value", v, -1e9, 1e9));
    double mean = values.stream().mapToDouble(v -> v).average().orElseThrow();
    if (n == 1) {
      return Optional.of(new Repeats(values, mean, Double.NaN, Double.NaN));
    }
    double half =
        new TDistribution(n - 1.0).inverseCumulativeProbability(UPPER)
            * Math.sqrt(variance(values, mean) / n);
    return Optional.of(new Repeats(values, mean, mean - half, mean + half));
  }

  private static double variance(List<Double> values, double mean) {
    return values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum() / (values.size() - 1);
  }

  /**
   * How much more this is than another.
   *
   * @param by difference of the means
   * @param low lower end of its 95 % interval
   * @param high upper end
   */
  public record Difference(double by, double low, double high) {
    /** True when the interval leaves nothing out, so the repeats do not tell the two apart. */
    public boolean cannotBeToldApart() {
      return low <= 0 && high >= 0;
    }
  }

  /** The difference to another; nothing where either has one candle only, or none scatters. */
  public Optional<Difference> over(Repeats other) {
    int n = values.size();
    int m = other.values.size();
    if (n < 2 || m < 2) {
      return Optional.empty();
    }
    double a = variance(values, mean) / n;
    double b = variance(other.values, other.mean) / m;
    if (!(a + b > 0)) {
      return Optional.empty();
    }
    double freedom = (a + b) * (a + b) / (a * a / (n - 1) + b * b / (m - 1));
    double half = new TDistribution(freedom).inverseCumulativeProbability(UPPER) * Math.sqrt(a + b);
    double by = mean - other.mean;
    return Optional.of(new Difference(by, by - half, by + half));
  }
}

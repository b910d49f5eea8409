package pourwright.burn;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;
import pourwright.quantity.Check;
import pourwright.quantity.Counted;

/**
 * How a melt pool grows: width = c·hoursⁿ, a straight line through the logarithms, with 95 %
 * intervals from Student's t. For comparing and for asking when the pool will be full; no law of
 * nature. Readings of a full pool say nothing of growth and are left out.
 *
 * <p>Source of the interval of a crossing: inverse prediction in simple regression; e.g.
 * NIST/SEMATECH e-Handbook of Statistical Methods, 4.5.2.1 (calibration), to first order.
 *
 * @param widthAfterAnHourMm c
 * @param exponent n
 * @param fullAfterH hours until the pool is as wide as the cavity
 * @param lowH lower end of its interval
 * @param highH upper end
 * @param readings how many it stands on
 */
public record PoolGrowth(
    double widthAfterAnHourMm,
    double exponent,
    double fullAfterH,
    double lowH,
    double highH,
    int readings) {
  private static final int LEAST = 3;

  /** A pool is read to about so much. House. */
  private static final double READ_TO_MM = 3;

  /**
   * A fit.
   *
   * @param hoursAndMm readings: hours since lighting and width, both above 0
   * @param fullMm width of the cavity at the wax, above 0
   * @return nothing with fewer than three readings of a growing pool
   */
  public static Optional<PoolGrowth> of(List<double[]> hoursAndMm, double fullMm) {
    Check.positive("full_mm", fullMm);
    List<double[]> logs = new ArrayList<>();
    for (double[] p : hoursAndMm) {
      if (p[0] > 0 && p[1] > 0 && p[1] < fullMm - READ_TO_MM) {
        logs.add(new double[] {Math.log(p[0]), Math.log(p[1])});
      }
    }
    int n = logs.size();
    double x = logs.stream().mapToDouble(p -> p[0]).average().orElse(0);
    double y = logs.stream().mapToDouble(p -> p[1]).average().orElse(0);
    double square = logs.stream().mapToDouble(p -> (p[0] - x) * (p[0] - x)).sum();
    double slope = logs.stream().mapToDouble(p -> (p[0] - x) * (p[1] - y)).sum() / square;
    if (n < LEAST || !(square > 0) || !(slope > 0)) {
      return Optional.empty();
    }
    double rest = logs.stream().mapToDouble(p -> Math.pow(p[1] - y - slope * (p[0] - x), 2)).sum();
    double noise = Math.sqrt(rest / (n - 2));
    double cross = x + (Math.log(fullMm) - y) / slope;
    double t = new TDistribution(n - 2.0).inverseCumulativeProbability(0.975);
    double half = t * noise / slope * Math.sqrt(1.0 / n + Math.pow(cross - x, 2) / square);
    return Optional.of(
        new PoolGrowth(
            Math.exp(y - slope * x),
            slope,
            Math.exp(cross),
            Math.exp(cross - half),
            Math.exp(cross + half),
            n));
  }

  /** Longer than any candle of a size for a room burns at a time; beyond it a time says nothing. */
  private static final double NEVER_H = 24;

  /** In a sentence. */
  public String sentence() {
    if (fullAfterH > NEVER_H) {
      return String.format(
          Locale.ROOT,
          "the pool grows as %.0f mm × hours^%.2f: at this rate it does not fill within a day (%s)",
          widthAfterAnHourMm,
          exponent,
          Counted.of(readings, "reading", "readings"));
    }
    return String.format(
        Locale.ROOT,
        "the pool grows as %.0f mm × hours^%.2f: full after about %.1f h (%.1f to %.1f, %s)",
        widthAfterAnHourMm,
        exponent,
        fullAfterH,
        lowH,
        highH,
        Counted.of(readings, "reading", "readings"));
  }
}

package pourwright.burn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;
import pourwright.quantity.Check;

/**
 * How fast a candle lost mass in a cycle, by least squares through its weighings, with a two-sided
 * 95 % interval.
 *
 * <p>Three or more weighings: Student's t on the slope's standard error, the scatter taken as at
 * least the scale's resolution. Two: the scale alone, {@code 1.96·√2·resolution/√3/hours}. Source:
 * any textbook of simple regression; e.g. NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1.
 *
 * @param gramsPerHour the rate, positive when mass is lost
 * @param low lower end of the interval
 * @param high upper end
 * @param weighings how many
 */
public record BurnRate(double gramsPerHour, double low, double high, int weighings) {
  /** A usual bench scale shows half grams. */
  public static final double USUAL_RESOLUTION_G = 0.5;

  private static final double WIDE = 1.959964;

  /** Rate of a cycle; nothing with fewer than two weighings at different minutes. */
  public static Optional<BurnRate> of(TestSample.Cycle cycle, double resolutionG) {
    Check.positive("resolution_g", resolutionG);
    List<double[]> points = new ArrayList<>();
    for (Reading reading : cycle.readings()) {
      Double mass = reading.values().get("mass_g");
      if (mass != null) {
        points.add(new double[] {reading.minute() / 60, mass});
      }
    }
    return of(points, resolutionG);
  }

  private static Optional<BurnRate> of(List<double[]> points, double resolutionG) {
    int n = points.size();
    double hours = points.stream().mapToDouble(p -> p[0]).average().orElse(0);
    double mass = points.stream().mapToDouble(p -> p[1]).average().orElse(0);
    double square = points.stream().mapToDouble(p -> (p[0] - hours) * (p[0] - hours)).sum();
    if (n < 2 || square <= 0) {
      return Optional.empty();
    }
    double slope = points.stream().mapToDouble(p -> (p[0] - hours) * (p[1] - mass)).sum() / square;
    double noise = resolutionG / Math.sqrt(3);
    double wide = WIDE;
    if (n > 2) {
      double rest =
          points.stream().mapToDouble(p -> Math.pow(p[1] - mass - slope * (p[0] - hours), 2)).sum();
      noise = Math.max(noise, Math.sqrt(rest / (n - 2)));
      wide = new TDistribution(n - 2.0).inverseCumulativeProbability(0.975);
    }
    double half = wide * noise / Math.sqrt(square);
    return Optional.of(new BurnRate(-slope, -slope - half, -slope + half, n));
  }

  /**
   * Hours that so much wax still burns, at the fast end, the rate and the slow end. The label says
   * the first.
   *
   * @param waxG wax that is left above the depth at which to stop, 0 or more
   */
  public double[] hoursLeft(double waxG) {
    Check.notNegative("wax_g", waxG);
    double slow = Math.max(low, 1e-9);
    return new double[] {waxG / high, waxG / Math.max(gramsPerHour, 1e-9), waxG / slow};
  }
}

package pourwright.label;

import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import pourwright.quantity.Check;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;

/**
 * Packages weighed from one lot.
 *
 * @param labelG what the label says, g, greater than 0
 * @param lotSize packages in the lot, at least as many as were weighed
 * @param netG net contents of each weighed package, g, 0 or more
 */
public record NetSample(double labelG, int lotSize, List<Double> netG) {
  /** Checks the numbers. */
  public NetSample {
    Check.positive("label_g", labelG);
    Check.positive("lot_size", lotSize);
    netG = List.copyOf(netG);
    if (netG.isEmpty()) {
      throw new OutOfRange("net_g", "no package was weighed", "weigh at least one");
    }
    if (netG.size() > lotSize) {
      throw new OutOfRange(
          "net_g",
          Counted.of(netG.size(), "package was", "packages were")
              + " weighed from a lot of "
              + lotSize,
          "check the size of the lot");
    }
    netG.forEach(g -> Check.notNegative("net_g", g));
  }

  int size() {
    return netG.size();
  }

  double averageError() {
    return netG.stream().mapToDouble(g -> g - labelG).sum() / size();
  }

  /** Sample standard deviation of the errors, g; 0 for a single package. */
  double standardDeviation() {
    if (size() < 2) {
      return 0;
    }
    double mean = averageError();
    double squares =
        netG.stream().mapToDouble(g -> (g - labelG - mean) * (g - labelG - mean)).sum();
    return Math.sqrt(squares / (size() - 1));
  }

  /** Packages whose error is below {@code −allowance}, but for a rounding hair. */
  int beyond(double allowanceG) {
    return (int) netG.stream().filter(g -> g - labelG < -allowanceG - 1e-9).count();
  }

  /** Student's t over the root of the sample size: how far a mean may stray. */
  static double factor(double probability, int size) {
    return new TDistribution(size - 1).inverseCumulativeProbability(probability) / Math.sqrt(size);
  }
}

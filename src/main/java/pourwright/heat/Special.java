package pourwright.heat;

import org.hipparchus.special.Erf;

/** Special functions of the closed forms. */
final class Special {
  private static final double EULER = 0.577215664901532860607;
  private static final int TERMS = 200;

  private Special() {}

  static double erf(double x) {
    return Erf.erf(x);
  }

  /**
   * {@code exp(x²)·erfc(x)} for x of zero or more. Source: the asymptotic series is Abramowitz and
   * Stegun 7.1.23, used from x = 20, where its first neglected term is below 1e-10.
   */
  static double erfcx(double x) {
    if (x < 20) {
      return Math.exp(x * x) * Erf.erfc(x);
    }
    double y = 1 / (2 * x * x);
    return (1 - y + 3 * y * y - 15 * y * y * y) / (x * Math.sqrt(Math.PI));
  }

  /**
   * Exponential integral E1 for x greater than zero. Source: Abramowitz and Stegun 5.1.11 (series,
   * to 1) and 5.1.22 (continued fraction, above).
   */
  static double e1(double x) {
    return x <= 1 ? e1Series(x) : Math.exp(-x) * e1Scaled(x);
  }

  private static double e1Series(double x) {
    double sum = -EULER - Math.log(x);
    double term = 1;
    for (int n = 1; n < TERMS; n++) {
      term *= -x / n;
      sum -= term / n;
      if (Math.abs(term) < 1e-18) {
        break;
      }
    }
    return sum;
  }

  /** {@code exp(x)·E1(x)} for x above 1, by the continued fraction from its far end. */
  private static double e1Scaled(double x) {
    double tail = 0;
    for (int n = TERMS; n >= 1; n--) {
      tail = n / (1 + n / (x + tail));
    }
    return 1 / (x + tail);
  }

  /** {@code exp(x)·E1(x)} for any x above zero. */
  static double e1TimesExp(double x) {
    return x <= 1 ? Math.exp(x) * e1Series(x) : e1Scaled(x);
  }

  /** Where a rising or falling function crosses zero, by bisection to the last digits. */
  static double root(java.util.function.DoubleUnaryOperator f, double low, double high) {
    double atLow = f.applyAsDouble(low);
    double a = low;
    double b = high;
    for (int i = 0; i < 200 && b - a > 1e-15 * b; i++) {
      double middle = 0.5 * (a + b);
      if (Math.signum(f.applyAsDouble(middle)) == Math.signum(atLow)) {
        a = middle;
      } else {
        b = middle;
      }
    }
    return 0.5 * (a + b);
  }
}

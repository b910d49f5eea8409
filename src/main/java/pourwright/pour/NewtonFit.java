package pourwright.pour;

/**
 * Least squares of T = room + A·exp(−(t − t₀)/τ): for a given τ the model is linear in A (and in
 * the room where that is free), so that only τ is searched for (variable projection).
 *
 * <p>Source: Golub and Pereyra, SIAM J. Numer. Anal. 10 (1973) 413-432, for separable least
 * squares.
 */
final class NewtonFit {
  private static final int GRID = 32;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private final double[] seconds;
  private final double[] celsius;
  private final double roomC;
  private final double tauLow;
  private final double tauHigh;

  /** One fitted curve: its squared error and its three constants. */
  record Curve(double sse, double roomC, double riseK, double tauS) {
    double at(double seconds) {
      return roomC + riseK * Math.exp(-seconds / tauS);
    }
  }

  /**
   * A problem of readings.
   *
   * @param seconds since the first reading
   * @param roomC the room, NaN when it is free
   */
  NewtonFit(double[] seconds, double[] celsius, double roomC) {
    this.seconds = seconds;
    this.celsius = celsius;
    this.roomC = roomC;
    double span = seconds[seconds.length - 1] - seconds[0];
    this.tauLow = span / 50;
    this.tauHigh = span * (Double.isNaN(roomC) ? 1e3 : 1e5);
  }

  private NewtonFit(double[] seconds, double[] celsius, double roomC, NewtonFit like) {
    this.seconds = seconds;
    this.celsius = celsius;
    this.roomC = roomC;
    this.tauLow = like.tauLow;
    this.tauHigh = like.tauHigh;
  }

  double tauLow() {
    return tauLow;
  }

  double tauHigh() {
    return tauHigh;
  }

  /** The same readings with one more. */
  NewtonFit with(double s, double c) {
    int n = seconds.length;
    double[] s2 = java.util.Arrays.copyOf(seconds, n + 1);
    double[] c2 = java.util.Arrays.copyOf(celsius, n + 1);
    s2[n] = s;
    c2[n] = c;
    return new NewtonFit(s2, c2, roomC, this);
  }

  /** The same readings with the room held at a temperature. */
  NewtonFit withRoom(double held) {
    return new NewtonFit(seconds, celsius, held, this);
  }

  /** The best curve of a given time constant. */
  Curve at(double tau) {
    return Double.isNaN(roomC) ? free(tau) : held(tau);
  }

  private Curve held(double tau) {
    double ey = 0;
    double ee = 0;
    for (int i = 0; i < seconds.length; i++) {
      double e = Math.exp(-seconds[i] / tau);
      ey += e * (celsius[i] - roomC);
      ee += e * e;
    }
    return curve(roomC, ey / ee, tau);
  }

  private Curve free(double tau) {
    int n = seconds.length;
    double meanE = 0;
    double meanC = 0;
    for (int i = 0; i < n; i++) {
      meanE += Math.exp(-seconds[i] / tau) / n;
      meanC += celsius[i] / n;
    }
    double ec = 0;
    double ee = 0;
    for (int i = 0; i < n; i++) {
      double e = Math.exp(-seconds[i] / tau) - meanE;
      ec += e * (celsius[i] - meanC);
      ee += e * e;
    }
    double rise = ee == 0 ? 0 : ec / ee;
    return curve(meanC - rise * meanE, rise, tau);
  }

  private Curve curve(double room, double rise, double tau) {
    double sse = 0;
    for (int i = 0; i < seconds.length; i++) {
      double miss = celsius[i] - room - rise * Math.exp(-seconds[i] / tau);
      sse += miss * miss;
    }
    return new Curve(sse, room, rise, tau);
  }

  /**
   * The best curve of all: a scan over log τ, a golden section, then Gauss-Newton to the bottom.
   */
  Curve best() {
    double low = Math.log(tauLow);
    double step = (Math.log(tauHigh) - low) / GRID;
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= GRID; i++) {
      double sse = at(Math.exp(low + i * step)).sse();
      if (sse < least) {
        least = sse;
        best = i;
      }
    }
    double a = low + Math.max(0, best - 1) * step;
    double b = low + Math.min(GRID, best + 1) * step;
    return polish(golden(a, b));
  }

  private double golden(double from, double to) {
    double a = from;
    double b = to;
    double x1 = b - GOLDEN * (b - a);
    double x2 = a + GOLDEN * (b - a);
    double f1 = at(Math.exp(x1)).sse();
    double f2 = at(Math.exp(x2)).sse();
    while (b - a > 1e-8) {
      if (f1 <= f2) {
        b = x2;
        x2 = x1;
        f2 = f1;
        x1 = b - GOLDEN * (b - a);
        f1 = at(Math.exp(x1)).sse();
      } else {
        a = x1;
        x1 = x2;
        f1 = f2;
        x2 = a + GOLDEN * (b - a);
        f2 = at(Math.exp(x2)).sse();
      }
    }
    return (a + b) / 2;
  }

  /** Gauss-Newton on log τ with the linear constants projected out (Kaufman's simplification). */
  private Curve polish(double logTau) {
    Curve now = at(Math.exp(logTau));
    for (int k = 0; k < 20; k++) {
      double step = gaussNewtonStep(now);
      double tau = now.tauS() * Math.exp(Math.max(-0.5, Math.min(0.5, step)));
      Curve next = at(Math.max(tauLow, Math.min(tauHigh, tau)));
      if (!(next.sse() <= now.sse()) || Math.abs(step) < 1e-15) {
        break;
      }
      now = next;
    }
    return now;
  }

  private double gaussNewtonStep(Curve now) {
    int n = seconds.length;
    double[] e = new double[n];
    double[] d = new double[n];
    for (int i = 0; i < n; i++) {
      e[i] = Math.exp(-seconds[i] / now.tauS());
      d[i] = now.riseK() * e[i] * seconds[i] / now.tauS();
    }
    if (Double.isNaN(roomC)) {
      centre(e);
      centre(d);
    }
    double ratio = dot(d, e) / dot(e, e);
    double dr = 0;
    double dd = 0;
    for (int i = 0; i < n; i++) {
      double across = d[i] - ratio * e[i];
      dr += across * (celsius[i] - now.at(seconds[i]));
      dd += across * across;
    }
    return dd == 0 ? 0 : dr / dd;
  }

  private static void centre(double[] x) {
    double mean = 0;
    for (double v : x) {
      mean += v / x.length;
    }
    for (int i = 0; i < x.length; i++) {
      x[i] -= mean;
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}

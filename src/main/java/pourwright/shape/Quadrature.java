package pourwright.shape;

import java.util.function.DoubleUnaryOperator;

/**
 * Adaptive Gauss–Kronrod quadrature, 7 and 15 points. Nodes never touch the ends, so that an
 * integrable corner may lie there.
 *
 * <p>Source: Piessens, de Doncker-Kapenga, Überhuber, Kahaner, QUADPACK (1983), routine QK15.
 * Departs from it: halves depth first, with the tolerance shared by halves, instead of keeping a
 * list of the worst.
 */
public final class Quadrature {
  /** Stated tolerance, of the whole, for every area and volume that has no closed form. */
  public static final double RELATIVE_TOLERANCE = 1e-10;

  private static final int DEPTH_MAX = 48;
  private static final double[] NODE = {
    0.991455371120812639206854697526329,
    0.949107912342758524526189684047851,
    0.864864423359769072789712788640926,
    0.741531185599394439863864773280788,
    0.586087235467691130294144691693013,
    0.405845151377397166906606412076961,
    0.207784955007898467600689403773245,
    0
  };
  private static final double[] KRONROD = {
    0.022935322010529224963732008058970,
    0.063092092629978553290700663189204,
    0.104790010322250183839876322541518,
    0.140653259715525918745189590510238,
    0.169004726639267902826583426598550,
    0.190350578064785409913256402421014,
    0.204432940075298892414161999234649,
    0.209482141084727828012999174891714
  };
  private static final double[] GAUSS = {
    0.129484966168869693270611432679082,
    0.279705391489276667901467771423780,
    0.381830050505118944950369775488975,
    0.417959183673469387755102040816327
  };

  private Quadrature() {}

  private record Estimate(double value, double error) {}

  /** The integral of {@code f} from {@code a} to {@code b} to {@link #RELATIVE_TOLERANCE}. */
  public static double integrate(DoubleUnaryOperator f, double a, double b) {
    if (a == b) {
      return 0;
    }
    Estimate whole = once(f, a, b);
    double tolerance = RELATIVE_TOLERANCE * Math.abs(whole.value) + 1e-300;
    return refine(f, a, b, whole, tolerance, 0);
  }

  /** The integral over neighbouring stretches whose ends are given in order. */
  public static double over(DoubleUnaryOperator f, double[] ends) {
    double sum = 0;
    for (int i = 1; i < ends.length; i++) {
      sum += integrate(f, ends[i - 1], ends[i]);
    }
    return sum;
  }

  private static double refine(
      DoubleUnaryOperator f, double a, double b, Estimate whole, double tolerance, int depth) {
    boolean good = whole.error <= tolerance || whole.error <= 1e-15 * Math.abs(whole.value);
    if (good || depth >= DEPTH_MAX) {
      return whole.value;
    }
    double middle = (a + b) / 2;
    return refine(f, a, middle, once(f, a, middle), tolerance / 2, depth + 1)
        + refine(f, middle, b, once(f, middle, b), tolerance / 2, depth + 1);
  }

  private static Estimate once(DoubleUnaryOperator f, double a, double b) {
    double centre = (a + b) / 2;
    double half = (b - a) / 2;
    double kronrod = 0;
    double gauss = 0;
    for (int i = 0; i < NODE.length; i++) {
      double step = half * NODE[i];
      double sum =
          i == NODE.length - 1
              ? f.applyAsDouble(centre)
              : f.applyAsDouble(centre - step) + f.applyAsDouble(centre + step);
      kronrod += KRONROD[i] * sum;
      if (i % 2 == 1) {
        gauss += GAUSS[i / 2] * sum;
      }
    }
    return new Estimate(half * kronrod, Math.abs(half * (kronrod - gauss)));
  }
}

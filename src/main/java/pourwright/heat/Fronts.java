package pourwright.heat;

/**
 * Conductivities of faces within the melting substance by the integral of the conductivity over
 * temperature (Kirchhoff's transformation): {@code k = (K(T) − K(T'))/(T − T')}. The harmonic mean
 * takes the worse conductor's word: where stirred melt, 30 times the better conductor, touches a
 * cell that begins to melt, a front waits until the cell is through and then jumps to the next, so
 * results move with the grid by several per cent. The integral is exact between two cells whatever
 * lies between them. Computed once a step, in double precision.
 */
final class Fronts {
  /** Below this difference, K, the two cells' mean conductivity is taken. */
  private static final double SAME = 1e-3;

  private final Box box;
  private final double[][] kelvin;
  private final double[][] acrossK;
  private final double[][] uprightK;
  private final double[][] mean;
  private final double startK;
  private final double width;
  private final double solid;
  private final double across;
  private final double upright;

  Fronts(Box box) {
    int planes = box.sharp ? box.nz : 0;
    this.box = box;
    kelvin = new double[planes][box.length];
    acrossK = new double[planes][box.length];
    uprightK = new double[planes][box.length];
    mean = new double[planes][box.length];
    Melting wax = box.curve.of();
    startK = wax.fromC() - box.curve.referenceC();
    width = wax.toC() - wax.fromC();
    solid = wax.solid();
    across = wax.liquid() * box.across;
    upright = wax.liquid() * box.upright;
  }

  /** Temperatures and integrals of a plane at the start of a step. */
  void begin(int z) {
    for (int i = 0; i < box.length && box.sharp; i++) {
      if (box.melts[z][i] > 0) {
        double t = box.kelvin(z, i);
        kelvin[z][i] = t;
        acrossK[z][i] = integral(t, across);
        uprightK[z][i] = integral(t, upright);
      }
    }
  }

  /** Integral of the conductivity from the start of melting, W/m. */
  private double integral(double t, double liquid) {
    double over = t - startK;
    if (over <= 0) {
      return solid * over;
    }
    double mushy = Math.min(over, width);
    double melting = width == 0 ? 0 : (liquid - solid) * mushy * mushy / (2 * width);
    return solid * mushy + melting + liquid * (over - mushy);
  }

  private double conductivity(double t, double liquid) {
    double part = width == 0 ? (t > startK ? 1 : 0) : (t - startK) / width;
    return solid + (liquid - solid) * Math.max(0, Math.min(1, part));
  }

  /** Half the conductivity of faces to the cell {@code step} further; 0 where it is not ours. */
  double[] across(int z, int step) {
    double[] to = mean[z];
    for (int i = 0; i < to.length; i++) {
      int j = i + step;
      boolean both = j < to.length && box.melts[z][i] > 0 && box.melts[z][j] > 0;
      to[i] = both ? 0.5 * between(new int[] {z, i}, new int[] {z, j}, acrossK, across) : 0;
    }
    return to;
  }

  /** Conductivity of faces to the plane above over the cells' heights; 0 where it is not ours. */
  double[] upright(int z) {
    double[] to = mean[z];
    for (int i = 0; i < to.length; i++) {
      boolean both = z + 1 < box.nz && box.melts[z][i] > 0 && box.melts[z + 1][i] > 0;
      to[i] =
          both
              ? between(new int[] {z, i}, new int[] {z + 1, i}, uprightK, upright)
                  / (box.tall[z][i] + box.tall[z + 1][i])
              : 0;
    }
    return to;
  }

  private double between(int[] a, int[] b, double[][] integral, double liquid) {
    double one = kelvin[a[0]][a[1]];
    double other = kelvin[b[0]][b[1]];
    if (Math.abs(one - other) < SAME) {
      return conductivity(0.5 * (one + other), liquid);
    }
    return (integral[a[0]][a[1]] - integral[b[0]][b[1]]) / (one - other);
  }
}

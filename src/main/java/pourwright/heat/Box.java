package pourwright.heat;

/**
 * A box of cells in planes, set up by the caller and advanced by {@link Stepper}. Cell {@code (x,
 * y)} of plane {@code z} stands at {@link #at}; every plane has a rim of idle cells, so that a
 * neighbour always exists. A line or an axisymmetric section is a box with one row a plane.
 *
 * <p>SI units. Temperatures are counted from the reference of the melting curve. Heat flows between
 * neighbours as {@code area·ΔT/(r + r')}, where {@code r} is the inverse conductivity (upright
 * times the cell's {@link #tall}) and {@code area} is twice the face's area over the distance of
 * the centres: the harmonic mean of the two conductivities (Patankar 1980, chapter 4).
 */
public final class Box {
  /** Cells along x, y and z, without the idle rim. */
  public final int nx;

  public final int ny;
  public final int nz;

  /** Distance in a plane's arrays between neighbours in y. */
  public final int stride;

  /** Length of a plane's arrays. */
  public final int length;

  /** The substance that melts. */
  public final Melting.Curve curve;

  /** How many times the liquid conducts better than at rest: across and upright. */
  public final double across;

  public final double upright;

  /** 1 where the cell can melt, else 0. */
  public final double[][] melts;

  /** Conductivity in W/(m·K): of the solid where the cell can melt. */
  public final double[][] conductivity;

  /** J/(m³·K) of cells that cannot melt. */
  public final double[][] heatCapacity;

  /** m³; 0 for idle cells. */
  public final double[][] volume;

  /** Face to the next cell in x, y and z: 2·area/distance, in m; 0 where nothing flows. */
  public final double[][] faceX;

  public final double[][] faceY;
  public final double[][] faceZ;

  /** Height of the cell over the distance that {@link #faceZ} was made with. */
  public final double[][] tall;

  /** W/K lost to the reference temperature. */
  public final double[][] loss;

  /** W brought in. */
  public final double[][] source;

  /** The state: J/m³ from the reference temperature. */
  public final double[][] enthalpy;

  /**
   * True when faces take the integral of the conductivity over temperature in place of the harmonic
   * mean (Kirchhoff's transformation); only for boxes of nothing but a substance with a sharp
   * melting point. Losses are then W per unit of that integral.
   */
  public final boolean integral;

  /**
   * True when faces between two cells that melt take the mean conductivity by its integral over
   * temperature ({@link Fronts}) in place of the harmonic mean; set before stepping.
   */
  public boolean sharp;

  /** A box of idle cells at the reference temperature, faces by the harmonic mean. */
  public Box(int[] cells, Melting.Curve curve, double across, double upright) {
    this(cells, curve, new double[] {across, upright}, false);
  }

  Box(int[] cells, Melting.Curve curve, double[] enhancement, boolean integral) {
    this.integral = integral;
    this.nx = cells[0];
    this.ny = cells[1];
    this.nz = cells[2];
    this.stride = nx + 2;
    this.length = ny == 1 ? stride : stride * (ny + 2);
    this.curve = curve;
    this.across = enhancement[0];
    this.upright = enhancement[1];
    melts = planes(0);
    conductivity = planes(1);
    heatCapacity = planes(1);
    volume = planes(0);
    faceX = planes(0);
    faceY = planes(0);
    faceZ = planes(0);
    tall = planes(1);
    loss = planes(0);
    source = planes(0);
    enthalpy = planes(0);
  }

  private double[][] planes(double value) {
    double[][] planes = new double[nz][length];
    for (double[] plane : planes) {
      java.util.Arrays.fill(plane, value);
    }
    return planes;
  }

  /** Where the cell stands in its plane's arrays. */
  public int at(int x, int y) {
    return ny == 1 ? x + 1 : (y + 1) * stride + x + 1;
  }

  /** Temperature above the reference, K. */
  public double kelvin(int z, int i) {
    return melts[z][i] > 0 ? curve.kelvin(enthalpy[z][i]) : enthalpy[z][i] / heatCapacity[z][i];
  }

  /** Liquid fraction, 0 where the cell cannot melt. */
  public double liquid(int z, int i) {
    return melts[z][i] > 0 ? curve.liquid(enthalpy[z][i]) : 0;
  }

  /** Heat held above the reference temperature, J. */
  public double storedJ() {
    double sum = 0;
    for (int z = 0; z < nz; z++) {
      double plane = 0;
      for (int i = 0; i < length; i++) {
        plane += enthalpy[z][i] * volume[z][i];
      }
      sum += plane;
    }
    return sum;
  }

  /** Cells that take part. */
  public long cells() {
    long count = 0;
    for (double[] plane : volume) {
      for (double v : plane) {
        count += v > 0 ? 1 : 0;
      }
    }
    return count;
  }

  /**
   * Largest step of the plain explicit method in one plane, s: no cell may give away more than it
   * holds, min C/ΣG, with every cell as conductive and as light as it can become.
   */
  public double explicitLimitS(int z) {
    double fastest = 0;
    for (int i = 1; i < length - 1; i++) {
      if (volume[z][i] <= 0) {
        continue;
      }
      double out = integral ? loss[z][i] * mostConductive(z, i, 1) : loss[z][i];
      out += across(z, i, z, i + 1, faceX[z][i]) + across(z, i, z, i - 1, faceX[z][i - 1]);
      if (ny > 1) {
        out += across(z, i, z, i + stride, faceY[z][i]);
        out += across(z, i, z, i - stride, faceY[z][i - stride]);
      }
      if (z + 1 < nz) {
        out += faceZ[z][i] / (resistance(z, i, upright) + resistance(z + 1, i, upright));
      }
      if (z > 0) {
        out += faceZ[z - 1][i] / (resistance(z, i, upright) + resistance(z - 1, i, upright));
      }
      fastest = Math.max(fastest, out / (volume[z][i] * lightest(z, i)));
    }
    return fastest == 0 ? Double.POSITIVE_INFINITY : 1 / fastest;
  }

  private double across(int z, int i, int z2, int j, double face) {
    return face == 0
        ? 0
        : face / (1 / mostConductive(z, i, across) + 1 / mostConductive(z2, j, across));
  }

  private double resistance(int z, int i, double enhancement) {
    return tall[z][i] / mostConductive(z, i, enhancement);
  }

  private double mostConductive(int z, int i, double enhancement) {
    double liquid = curve.of().liquid() * enhancement;
    return melts[z][i] > 0 ? Math.max(conductivity[z][i], liquid) : conductivity[z][i];
  }

  private double lightest(int z, int i) {
    Melting wax = curve.of();
    return melts[z][i] > 0
        ? wax.density() * Math.min(wax.heatSolid(), wax.heatLiquid())
        : heatCapacity[z][i];
  }
}

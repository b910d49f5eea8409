package pourwright.heat;

import java.util.function.LongSupplier;

/**
 * Measures one plain explicit sweep over a round vessel of 80 by 100 mm, cell for cell the one of a
 * plain C program that it is compared with. The clock is the caller's.
 */
public final class SweepBench {
  private static final double OUTER = 40;
  private static final double INNER = 32.5;
  private static final double HIGH = 100;
  private static final double BASE = 9;
  private static final double FILL = 85;
  private static final double SCALE = 1e-3;
  private static final int PIECES = 8;

  private SweepBench() {}

  /** A sweep in one precision. */
  interface Plain {
    void thermal(int z);

    void update(int from, int to, int member);

    Sum sum();
  }

  /** Sum in double precision. */
  static final class Sum {
    private double value;

    void add(double more) {
      value += more;
    }

    double value() {
      return value;
    }
  }

  /** Planes in double precision, whatever they are copied to. */
  record Doubles(double[][] values) {
    Doubles(int nz, int length) {
      this(new double[nz][length]);
    }
  }

  /** What is swept. */
  record Setting(
      int nx,
      int ny,
      int nz,
      Doubles enthalpy,
      Doubles slope,
      Doubles melts,
      Doubles resistance,
      Doubles gain,
      double[] curve) {}

  /**
   * What was measured.
   *
   * @param activeCells cells that take part
   * @param nanosPerSweep best of the repeats
   * @param heat a sum over the cells, to see that the same was computed
   */
  public record Measured(long activeCells, double nanosPerSweep, double heat) {

    /** Million active cells a second. */
    public double millionsPerSecond() {
      return activeCells / nanosPerSweep * 1e3;
    }
  }

  private static final class Wax {
    static final double START = 2100 * (46 - 21);
    static final double END = START + 165e3 + 0.5 * (2100 + 2200) * (54 - 46);
  }

  /** Sweeps {@code repeats} times, six times over, and takes the best. */
  public static Measured measure(
      double gridMm, int repeats, Stepper.Precision precision, int threads, LongSupplier nanos) {
    Setting setting = setting(gridMm);
    try (Team team = new Team(threads)) {
      Plain plain =
          precision == Stepper.Precision.SINGLE
              ? new ExplicitSweep32(setting, threads)
              : new ExplicitSweep64(setting, threads);
      double best = Double.POSITIVE_INFINITY;
      for (int b = 0; b < 6; b++) {
        long from = nanos.getAsLong();
        for (int i = 0; i < repeats; i++) {
          sweep(plain, setting.nz, threads, team);
        }
        best = Math.min(best, (double) (nanos.getAsLong() - from) / repeats);
      }
      return new Measured(active(setting), best, plain.sum().value());
    }
  }

  private static void sweep(Plain plain, int nz, int threads, Team team) {
    int pieces = threads == 1 ? 1 : PIECES;
    team.each(
        pieces,
        (piece, member) -> {
          for (int z = piece * nz / pieces; z < (piece + 1) * nz / pieces; z++) {
            plain.thermal(z);
          }
        });
    team.each(
        pieces,
        (piece, member) -> plain.update(piece * nz / pieces, (piece + 1) * nz / pieces, member));
  }

  private static long active(Setting setting) {
    long count = 0;
    for (double[] plane : setting.gain.values) {
      for (double g : plane) {
        count += g > 0 ? 1 : 0;
      }
    }
    return count;
  }

  private static Setting setting(double gridMm) {
    int nx = 2 * (int) Math.ceil(OUTER / gridMm) + 2;
    int nz = (int) Math.ceil(HIGH / gridMm) + 2;
    int length = nx * nx;
    Setting of =
        new Setting(
            nx,
            nx,
            nz,
            new Doubles(nz, length),
            new Doubles(nz, length),
            new Doubles(nz, length),
            new Doubles(nz, length),
            new Doubles(nz, length),
            curve());
    for (double[] plane : of.resistance.values) {
      java.util.Arrays.fill(plane, 1e15);
    }
    for (int z = 1; z < nz - 1; z++) {
      for (int y = 1; y < nx - 1; y++) {
        for (int x = 1; x < nx - 1; x++) {
          lay(of, new int[] {x, y, z}, gridMm);
        }
      }
    }
    return of;
  }

  private static double[] curve() {
    double solid = 1 / (2100 * SCALE);
    double liquid = 1 / (2200 * SCALE);
    double mushy = 8 / ((Wax.END - Wax.START) * SCALE);
    double b = 0.5 * (mushy - solid);
    double c = 0.5 * (liquid - mushy);
    double start = Wax.START * SCALE;
    double end = Wax.END * SCALE;
    double less = 0.5 * (1 / 0.48 - 1 / 0.23);
    return new double[] {-(b * start + c * end), b, c, start, end, 29, 2000, less};
  }

  private static void lay(Setting of, int[] at, double gridMm) {
    double radius = Math.hypot(at[0] + .5 - of.nx / 2.0, at[1] + .5 - of.nx / 2.0) * gridMm;
    double high = (at[2] - .5) * gridMm;
    if (radius >= OUTER || high > HIGH) {
      return;
    }
    double cell = gridMm / 1e3;
    double step = .9 * cell * cell / (6 * 1.1 / (2050 * 880.0));
    int i = at[1] * of.nx + at[0];
    int z = at[2];
    if (radius < INNER && high > BASE) {
      if (high < BASE + FILL) {
        double above = Math.exp(-(FILL + BASE - high) / 40);
        double hot = .6 * (Wax.END - Wax.START) * Math.exp(-radius * radius / 400) * 2;
        of.melts.values[z][i] = 1;
        of.gain.values[z][i] = 2 * step / (880 * cell * cell) * SCALE;
        of.enthalpy.values[z][i] = (Wax.START + hot) * SCALE * above;
        of.slope.values[z][i] = 0.5 * (1 / (2100 * SCALE) + 1 / (2200 * SCALE));
        of.resistance.values[z][i] = 1 / 0.23;
      }
    } else {
      of.gain.values[z][i] = 2 * step / (2050 * cell * cell) * SCALE;
      of.enthalpy.values[z][i] = 880 * SCALE * 5;
      of.slope.values[z][i] = 1 / (880 * SCALE);
      of.resistance.values[z][i] = 1 / 1.1;
    }
  }
}

package pourwright.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.burn.Burn;
import pourwright.burn.BurnResult;
import pourwright.burn.BurningWick;
import pourwright.burn.Flame;
import pourwright.burn.Room;
import pourwright.burn.Simulation;
import pourwright.burn.Vessel;
import pourwright.heat.Melting;
import pourwright.heat.Stepper.Precision;
import pourwright.heat.SweepBench;
import pourwright.shape.Circle;
import pourwright.shape.Solid;

/**
 * {@code bench burn [--c FILE.c] [--grid 1.5] [--rounds 2] [--reference]}: how fast the burn kernel
 * is, as a table of figures against their bars. With {@code --c} a plain C program of the same
 * sweep is compiled with {@code gcc -O3 -march=native} and run in turn with it; ratios above 1 are
 * in our favour. With {@code --reference} the errors of long and of explicit steps are taken
 * against half the grid, so that the times are known to be for equal errors. Exit code 1 when a bar
 * is missed.
 */
public final class BurnBench {
  private static final String USAGE =
      "bench burn [--c FILE.c] [--grid 1.5] [--rounds 2] [--reference]";

  /** Four hours in three dimensions on two cores, s. */
  private static final double SECONDS_MAX = 5;

  /** Of the cell updates a second of the C program. */
  private static final double SWEEP_MIN = 0.6;

  /** Times faster to the same error than the C program's explicit steps. */
  private static final double SOLUTION_MIN = 3;

  /** Percentage points that long steps may be worse than explicit ones and still count as equal. */
  private static final double EQUAL_PERCENT = 0.3;

  private static final double ROOM_C = 21;

  private final PrintStream out;

  /** A bench that prints there. */
  public BurnBench(PrintStream out) {
    this.out = out;
  }

  private record Timed(BurnResult result, double seconds) {}

  /** Runs with the words after {@code burn}. */
  public int run(List<String> words) throws IOException, InterruptedException {
    List<String> rest = new ArrayList<>(words);
    String c = option(rest, "--c", "");
    double grid = Double.parseDouble(option(rest, "--grid", "1.5"));
    int rounds = Integer.parseInt(option(rest, "--rounds", "2"));
    boolean reference = rest.remove("--reference");
    if (!rest.isEmpty()) {
      throw new RefusedInput("'" + rest.get(0) + "' is not understood", "", USAGE);
    }
    out.println("JVM flags: " + ManagementFactory.getRuntimeMXBean().getInputArguments());
    out.println(
        String.format(
            Locale.ROOT,
            "%d processors, load %.1f; ratios hold, seconds only on an idle machine",
            Runtime.getRuntime().availableProcessors(),
            ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage()));
    Bars bars = new Bars(out);
    burns(bars, grid, rounds);
    if (!c.isEmpty()) {
      try (PlainC program = new PlainC(Path.of(c))) {
        against(bars, program, grid, rounds);
      }
    }
    if (reference) {
      reference(bars, grid);
    }
    return bars.failed() ? 1 : 0;
  }

  private static String option(List<String> words, String name, String absent) {
    int at = words.indexOf(name);
    if (at < 0 || at + 1 >= words.size()) {
      return absent;
    }
    words.remove(at);
    return words.remove(at);
  }

  /** The vessel of the comparison: 80 by 100 mm outside, one wick, four hours. */
  private static Burn vessel(double grid) {
    Vessel vessel =
        new Vessel(
            Solid.straight(new Circle(65), 91), 85, 7.5, 9, new Vessel.Stuff(1.1, 2050, 880, .92));
    return new Burn(
        vessel,
        new Melting(46, 54, 165e3, 2100, 2200, .23, .16, 880),
        50,
        1.5,
        List.of(new BurningWick(0, 0, 5.5)),
        new Flame(40e6, .2, .95, 25, 4, 7.5),
        new Room(ROOM_C, .95, Room.Convection.usual()),
        Burn.Fineness.of(4, grid, 600, Burn.Solver.THREE_D));
  }

  private static Burn with(Burn burn, Burn.Fineness fineness) {
    return new Burn(
        burn.vessel(),
        burn.wax(),
        burn.across(),
        burn.upright(),
        burn.wicks(),
        burn.flame(),
        burn.room(),
        fineness);
  }

  /**
   * One thread's seconds are those it had the processor, which an idle machine's clock shows too;
   * several threads' are the clock's.
   */
  private static Timed timed(Burn burn) {
    boolean alone = burn.fineness().threads() == 1;
    long from = nanos(alone);
    BurnResult result = Simulation.run(burn);
    return new Timed(result, (nanos(alone) - from) * 1e-9);
  }

  private static long nanos(boolean alone) {
    return alone
        ? ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime()
        : System.nanoTime();
  }

  private static Timed best(Burn burn, int rounds) {
    Timed best = timed(burn);
    for (int i = 1; i < rounds; i++) {
      Timed now = timed(burn);
      best = now.seconds < best.seconds ? now : best;
    }
    return best;
  }

  private void burns(Bars bars, double grid, int rounds) {
    Burn burn = vessel(grid);
    double[] single = new double[2];
    for (int threads = 1; threads <= 2; threads++) {
      Timed best = best(with(burn, burn.fineness().withThreads(threads)), rounds);
      single[threads - 1] = best.seconds;
      String what =
          String.format(Locale.ROOT, "4 h, 3-D at %.2f mm, quarter, float, %d", grid, threads);
      if (threads == 1) {
        bars.tell(what + " thread", best.seconds, " s");
        BurnResult.Effort effort = best.result.effort();
        bars.remark("%d cells, %d sweeps", effort.cells(), effort.sweeps());
      } else {
        bars.atMost(what + " threads", best.seconds, SECONDS_MAX, " s");
      }
    }
    bars.atLeast("two threads against one", single[0] / single[1], 1.1, "");
  }

  private void against(Bars bars, PlainC c, double grid, int rounds)
      throws IOException, InterruptedException {
    for (Precision precision : Precision.values()) {
      String real = precision == Precision.SINGLE ? "float" : "double";
      for (int threads = 1; threads <= 2; threads++) {
        Path program = c.compile(precision, threads);
        PlainC.Rate theirs = new PlainC.Rate(0, Double.POSITIVE_INFINITY);
        double ours = 0;
        for (int i = 0; i < Math.max(3, rounds); i++) {
          PlainC.Rate now = c.run(program, grid, threads);
          theirs = now.millions() > theirs.millions() ? now : theirs;
          ours = Math.max(ours, own(grid, precision, threads));
        }
        String what = real + ", " + threads + (threads == 1 ? " thread" : " threads");
        bars.atLeast("one sweep against C, " + what, ours / theirs.millions(), SWEEP_MIN, "");
        bars.remark("%.0f and %.0f million active cells a second", ours, theirs.millions());
        solution(bars, what, with(vessel(grid), whole(grid, precision, threads)), theirs);
      }
    }
  }

  private static Burn.Fineness whole(double grid, Precision precision, int threads) {
    return vessel(grid)
        .fineness()
        .withSymmetry(false)
        .withPrecision(precision)
        .withThreads(threads);
  }

  private static double own(double grid, Precision precision, int threads) {
    return SweepBench.measure(grid, 60, precision, threads, System::nanoTime).millionsPerSecond();
  }

  /** The same four hours on the whole vessel: our steps, and the C program's explicit ones. */
  private void solution(Bars bars, String what, Burn whole, PlainC.Rate theirs) {
    Timed ours = timed(whole);
    double step = explicitStepS(whole.fineness().gridMm());
    double steps = 4 * 3600 / step;
    double explicit = steps * theirs.msPerStep() * 1e-3;
    bars.atLeast(
        "time to 4 h without symmetry against C, " + what,
        explicit / ours.seconds,
        SOLUTION_MIN,
        "");
    bars.remark(
        "ours %.1f s (%d sweeps), C %.1f s (%.0f steps of %.3f s)",
        ours.seconds, ours.result.effort().sweeps(), explicit, steps, step);
  }

  /** Nine tenths of the explicit limit where the liquid conducts 50 times better across. */
  private static double explicitStepS(double grid) {
    double cell = grid / 1000;
    double across = .16 * 50 / (880 * 2100.0);
    double upright = Math.max(.23, .16 * 1.5) / (880 * 2100.0);
    return .9 * cell * cell / (4 * across + 2 * upright);
  }

  /** Errors of long and of (nearly) explicit steps against half the grid: they have to be equal. */
  private void reference(Bars bars, double grid) {
    BurnResult fine = Simulation.run(vessel(grid / 2));
    BurnResult explicit = steps(grid, 2.4 * explicitStepS(grid));
    BurnResult ours = steps(grid, vessel(grid).fineness().stepMaxS());
    equal(bars, "pool radius at 20 min", radius(ours), radius(explicit), radius(fine));
    equal(bars, "wall rise", wall(ours), wall(explicit), wall(fine));
  }

  private static BurnResult steps(double grid, double step) {
    Burn burn = vessel(grid);
    return Simulation.run(with(burn, burn.fineness().withStep(step)));
  }

  private static void equal(Bars bars, String what, double ours, double explicit, double fine) {
    double own = 100 * (ours / fine - 1);
    double theirs = 100 * (explicit / fine - 1);
    bars.atMost(
        what + ": error of long steps over that of explicit ones",
        Math.abs(own) - Math.abs(theirs),
        EQUAL_PERCENT,
        " pp");
    bars.remark("%+.2f %% and %+.2f %% against half the grid", own, theirs);
  }

  private static double wall(BurnResult result) {
    return result.wallMaxC() - ROOM_C;
  }

  /** While it grows: later the pool is full at any grid. */
  private static double radius(BurnResult result) {
    return result.pool().get(1).equivalentRadiusMm();
  }
}

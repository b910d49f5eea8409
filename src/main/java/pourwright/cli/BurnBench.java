package pourwright.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
 * {@code bench burn [--c FILE.c] [--grid 1.5] [--rounds 3] [--reference]}: how fast the burn kernel
 * is. With {@code --c} a plain C program of the same sweep is compiled with {@code gcc -O3
 * -march=native} and run in turn with it; ratios above 1 are in our favour. With {@code
 * --reference} the errors of both ways of stepping are taken against 0.75 mm, which takes long.
 */
public final class BurnBench {
  private static final String USAGE = "bench burn [--c FILE.c] [--grid 1.5] [--rounds 3]";
  private static final Pattern MS = Pattern.compile("([0-9.]+) ms/step");
  private static final Pattern ACTIVE = Pattern.compile("active ([0-9.]+) Mcell/s");

  private final PrintStream out;

  /** A bench that prints there. */
  public BurnBench(PrintStream out) {
    this.out = out;
  }

  private record Rate(double millions, double msPerStep) {}

  /** Runs with the words after {@code burn}. */
  public int run(List<String> words) throws IOException, InterruptedException {
    List<String> rest = new ArrayList<>(words);
    String c = option(rest, "--c", "");
    double grid = Double.parseDouble(option(rest, "--grid", "1.5"));
    int rounds = Integer.parseInt(option(rest, "--rounds", "3"));
    boolean reference = rest.remove("--reference");
    if (!rest.isEmpty()) {
      throw new RefusedInput("'" + rest.get(0) + "' is not understood", "", USAGE);
    }
    out.println("JVM flags: " + ManagementFactory.getRuntimeMXBean().getInputArguments());
    burns(grid, rounds);
    if (!c.isEmpty()) {
      Path folder = Files.createTempDirectory("burn-bench");
      try {
        against(Path.of(c), folder, grid, rounds);
      } finally {
        try (var files = Files.list(folder)) {
          for (Path file : files.toList()) {
            Files.delete(file);
          }
        }
        Files.delete(folder);
      }
    }
    if (reference) {
      reference();
    }
    return 0;
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
  private static Burn vessel(double grid, Burn.Solver solver, double hours) {
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
        new Room(21, .95, Room.Convection.usual()),
        Burn.Fineness.of(hours, grid, 600, solver));
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

  private record Timed(BurnResult result, double seconds) {}

  private static Timed timed(Burn burn) {
    long from = System.nanoTime();
    BurnResult result = Simulation.run(burn);
    return new Timed(result, (System.nanoTime() - from) * 1e-9);
  }

  private void burns(double grid, int rounds) {
    Burn burn = vessel(grid, Burn.Solver.THREE_D, 4);
    for (int threads = 1; threads <= 2; threads++) {
      for (Precision precision : Precision.values()) {
        Timed best = null;
        for (int i = 0; i < rounds; i++) {
          Timed now =
              timed(with(burn, burn.fineness().withThreads(threads).withPrecision(precision)));
          best = best == null || now.seconds < best.seconds ? now : best;
        }
        if (best != null) {
          say(
              "4 h at %.2f mm, quarter, %s, %d thread(s): %.2f s (%d cells, %d sweeps, %.0f Mcell/s)",
              grid,
              precision,
              threads,
              best.seconds,
              best.result.effort().cells(),
              best.result.effort().sweeps(),
              best.result.effort().cells() * 1e-6 * best.result.effort().sweeps() / best.seconds);
        }
      }
    }
  }

  private void say(String words, Object... values) {
    out.println(String.format(Locale.ROOT, words, values));
    out.flush();
  }

  private void against(Path source, Path folder, double grid, int rounds)
      throws IOException, InterruptedException {
    for (Precision precision : Precision.values()) {
      String real = precision == Precision.SINGLE ? "float" : "double";
      for (int threads = 1; threads <= 2; threads++) {
        Path program = folder.resolve(real + threads);
        List<String> gcc = new ArrayList<>(List.of("gcc", "-O3", "-march=native"));
        if (threads > 1) {
          gcc.add("-fopenmp");
        }
        gcc.addAll(List.of("-DREAL=" + real, source.toString(), "-o", program.toString(), "-lm"));
        said(gcc);
        Rate ours = new Rate(0, 0);
        Rate theirs = new Rate(0, 0);
        for (int i = 0; i < rounds; i++) {
          theirs = better(theirs, plainC(program, grid, threads));
          ours = better(ours, own(grid, precision, threads));
        }
        say(
            "sweep %s, %d thread(s): ours %.0f, C %.0f million active cells/s, ratio %.2f",
            real, threads, ours.millions, theirs.millions, ours.millions / theirs.millions);
        solution(grid, precision, threads, theirs);
      }
    }
  }

  private static Rate better(Rate one, Rate other) {
    return one.millions >= other.millions ? one : other;
  }

  private static Rate own(double grid, Precision precision, int threads) {
    SweepBench.Measured measured =
        SweepBench.measure(grid, 60, precision, threads, System::nanoTime);
    return new Rate(measured.millionsPerSecond(), measured.nanosPerSweep() * 1e-6);
  }

  private static Rate plainC(Path program, double grid, int threads)
      throws IOException, InterruptedException {
    String said = said(List.of(program.toString(), "1", "" + grid, "60", "" + threads));
    return new Rate(number(ACTIVE, said), number(MS, said));
  }

  private static double number(Pattern pattern, String text) {
    Matcher found = pattern.matcher(text);
    if (!found.find()) {
      throw new RefusedInput("the C program said '" + text + "'", "", USAGE);
    }
    return Double.parseDouble(found.group(1));
  }

  private static String said(List<String> command) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (process.waitFor() != 0) {
      throw new RefusedInput(command.get(0) + " failed: " + said, "", USAGE);
    }
    return said;
  }

  /**
   * Time to the same four hours on the whole vessel: our steps, and the C program's explicit ones.
   */
  private void solution(double grid, Precision precision, int threads, Rate theirs) {
    Burn burn = vessel(grid, Burn.Solver.THREE_D, 4);
    Burn.Fineness whole =
        burn.fineness().withSymmetry(false).withPrecision(precision).withThreads(threads);
    Timed ours = timed(with(burn, whole));
    double step = explicitStepS(grid);
    double explicit = 4 * 3600 / step * theirs.msPerStep * 1e-3;
    say(
        "  time to 4 h without symmetry: ours %.1f s (%d sweeps), C %.1f s (%.0f steps of %.3f s):"
            + " ratio %.2f",
        ours.seconds,
        ours.result.effort().sweeps(),
        explicit,
        4 * 3600 / step,
        step,
        explicit / ours.seconds);
  }

  /** Nine tenths of the explicit limit where the liquid conducts 50 times better across. */
  private static double explicitStepS(double grid) {
    double cell = grid / 1000;
    double across = .16 * 50 / (880 * 2100.0);
    double upright = Math.max(.23, .16 * 1.5) / (880 * 2100.0);
    return .9 * cell * cell / (4 * across + 2 * upright);
  }

  private void reference() {
    BurnResult fine = Simulation.run(vessel(.75, Burn.Solver.THREE_D, 4));
    for (double step : new double[] {30, .3}) {
      Burn burn = vessel(1.5, Burn.Solver.THREE_D, 4);
      BurnResult coarse = Simulation.run(with(burn, burn.fineness().withStep(step)));
      say(
          "steps of %.2f s at 1.5 mm against 0.75 mm: pool radius %+.2f %%, wall rise %+.2f %%",
          step, off(coarse, fine, true), off(coarse, fine, false));
    }
  }

  private static double off(BurnResult a, BurnResult b, boolean pool) {
    double one = pool ? last(a) : a.wallMaxC() - 21;
    double other = pool ? last(b) : b.wallMaxC() - 21;
    return 100 * (one / other - 1);
  }

  private static double last(BurnResult result) {
    return result.pool().get(result.pool().size() - 1).equivalentRadiusMm();
  }
}

package pourwright.main;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import pourwright.cli.ExitCode;
import pourwright.store.StudioFolder;

/** The sample studio that the first start opens, in a folder of its own. */
final class SampleStudio {
  /** What it is called; invented, like everything in it. */
  static final String NAME = "Undercroft Lantern Works";

  private static final int YEARS = 2;
  private static final long SEED = 17;

  private SampleStudio() {}

  /** Makes it in an empty folder. */
  static void make(Path folder, PrintWriter out) {
    out.println("Laying out the sample studio in " + folder + " \u2026");
    out.flush();
    make(folder, new DemoStudio.Spec(YEARS, SEED), out);
  }

  /** The command: makes it in a folder that holds no studio yet. */
  static int demo(Path folder, int years, long seed, PrintWriter out, PrintWriter err) {
    if (years < 1 || years > 10) {
      err.println("pourwright: " + years + " years are not 1 to 10");
      return ExitCode.USAGE;
    }
    if (Wiring.hasStudio(folder)) {
      err.println(
          "pourwright: there is a studio in " + folder + " already; choose an empty folder");
      return ExitCode.USAGE;
    }
    long began = System.nanoTime();
    try (DataFolder held = DataFolder.hold(folder)) {
      make(held.path(), new DemoStudio.Spec(years, seed), out);
    }
    out.printf(
        "%s is in %s: %d years, made in %.1f s%n",
        NAME, folder, years, (System.nanoTime() - began) / 1e9);
    out.flush();
    return ExitCode.OK;
  }

  /**
   * Makes it beside the folder and moves it in when it is whole, so that a making that was cut
   * short is never opened as a studio.
   */
  private static void make(Path folder, DemoStudio.Spec spec, PrintWriter out) {
    StudioFolder half = new StudioFolder(beside(folder));
    try {
      if (Files.exists(half.root())) {
        half.remove();
        out.println("A sample studio whose making was cut short was in the way and is removed.");
        out.flush();
      }
      try (Wiring wiring = Wiring.open(half.root(), "", Wiring.systemClock())) {
        DemoStudio.make(
            wiring.store().unitOfWork(),
            wiring.studio().files(),
            spec,
            Instant.now(),
            ZoneId.systemDefault());
      }
      half.moveInto(new StudioFolder(folder));
      half.remove();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot lay out the sample studio in " + folder, e);
    }
  }

  /** Where it is made: a neighbour, so that moving it is a change of names. */
  private static Path beside(Path folder) {
    return folder.toAbsolutePath().resolveSibling(folder.getFileName() + ".being-made");
  }
}

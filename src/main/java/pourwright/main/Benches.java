package pourwright.main;

import java.io.IOException;
import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;
import pourwright.cli.BurnBench;
import pourwright.cli.PsplibBench;
import pourwright.cli.RefusedInput;
import pourwright.cli.WicksBench;
import pourwright.solve.CpSatPlanner;
import pourwright.solve.ProjectPlanner;

/** {@code bench NAME …}: measures the program against figures that others published. */
final class Benches {
  private Benches() {}

  /** Runs with the words after {@code bench}; returns the exit code. */
  static int run(String[] words, PrintStream out, PrintStream err) throws IOException {
    List<String> rest = Arrays.asList(words).subList(Math.min(1, words.length), words.length);
    String name = words.length == 0 ? "" : words[0];
    try {
      return switch (name) {
        case "psplib" -> new PsplibBench(new ProjectPlanner(), out).run(rest);
        case "pages" -> new PagesBench(out).run(rest);
        case "studios" -> new StudiosBench(CpSatPlanner.usual(), out).run(rest);
        case "burn" -> new BurnBench(out).run(rest);
        case "defects" -> new DefectsBench(out).run(rest);
        case "wicks" -> new WicksBench(out).run(rest);
        default ->
            throw new RefusedInput(
                "'" + name + "' is not a bench",
                "",
                "known: burn, defects, pages, psplib, studios, wicks");
      };
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return 1;
    } catch (RefusedInput e) {
      err.println("pourwright: " + e.getMessage() + "; " + e.hint());
      return 2;
    }
  }
}

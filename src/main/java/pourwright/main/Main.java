package pourwright.main;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import pourwright.cli.CommandTree;
import pourwright.cli.Computations;
import pourwright.cli.ComputeCommand;
import pourwright.cli.SolveComputations;
import pourwright.solve.CpSatLeftoverPacking;
import pourwright.solve.CpSatPurchasing;

/** The program's door: headless computations take the short way, everything else the long one. */
public final class Main {
  private Main() {}

  /** Runs the words of the command line and ends the process with the exit code. */
  public static void main(String[] words) throws IOException {
    System.exit(run(words));
  }

  static int run(String[] words) throws IOException {
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    try {
      return run(words, Machine.thisOne(), System.in, out, err);
    } finally {
      out.flush();
      err.flush();
    }
  }

  /** Runs the words on a machine, reading and answering here; returns the exit code. */
  static int run(String[] words, Machine machine, InputStream in, PrintStream out, PrintStream err)
      throws IOException {
    if (words.length > 0 && words[0].equals("compute")) {
      String[] rest = Arrays.copyOfRange(words, 1, words.length);
      return new ComputeCommand(computations(), out, err).run(rest, in);
    }
    if (words.length == 1 && words[0].startsWith("warm")) {
      return words[0].equals("warm-compute") ? Warm.compute(computations()) : Warm.pages();
    }
    Commands commands = new Commands(machine, in, out, err);
    return new CommandTree(
            commands,
            Commands::version,
            Commands.writer(out),
            Commands.writer(err),
            commands::trouble)
        .run(words);
  }

  /** All headless computations; the solver's classes load when one of its own is asked for. */
  static Computations computations() {
    return SolveComputations.addTo(
        Computations.ofTheCraft(), () -> new CpSatLeftoverPacking(), () -> new CpSatPurchasing());
  }

  private static PrintStream utf8(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }
}

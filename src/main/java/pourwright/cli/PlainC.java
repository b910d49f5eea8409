package pourwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pourwright.heat.Stepper.Precision;

/**
 * A plain C program of the explicit sweep, compiled with {@code gcc -O3 -march=native} in a folder
 * of its own that goes with it; no part of the product.
 */
final class PlainC implements AutoCloseable {
  private static final String HINT = "bench burn [--c FILE.c] [--grid 1.5] [--rounds 2]";
  private static final Pattern MS = Pattern.compile("([0-9.]+) ms/step");
  private static final Pattern ACTIVE = Pattern.compile("active ([0-9.]+) Mcell/s");

  private final Path source;
  private final Path folder;

  PlainC(Path source) throws IOException {
    this.source = source;
    this.folder = Files.createTempDirectory("burn-bench");
  }

  /** Million active cells a second, and milliseconds a step. */
  record Rate(double millions, double msPerStep) {}

  /** Compiles for one precision and number of threads. */
  Path compile(Precision precision, int threads) throws IOException, InterruptedException {
    String real = precision == Precision.SINGLE ? "float" : "double";
    Path program = folder.resolve(real + threads);
    List<String> gcc = new ArrayList<>(List.of("gcc", "-O3", "-march=native"));
    if (threads > 1) {
      gcc.add("-fopenmp");
    }
    gcc.addAll(List.of("-DREAL=" + real, source.toString(), "-o", program.toString(), "-lm"));
    said(gcc);
    return program;
  }

  /** Runs a compiled program once. */
  Rate run(Path program, double grid, int threads) throws IOException, InterruptedException {
    String said = said(List.of(program.toString(), "1", "" + grid, "60", "" + threads));
    return new Rate(number(ACTIVE, said), number(MS, said));
  }

  private static double number(Pattern pattern, String text) {
    Matcher found = pattern.matcher(text);
    if (!found.find()) {
      throw new RefusedInput("the C program said '" + text + "'", "", HINT);
    }
    return Double.parseDouble(found.group(1));
  }

  private static String said(List<String> command) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (process.waitFor() != 0) {
      throw new RefusedInput(command.get(0) + " failed: " + said, "", HINT);
    }
    return said;
  }

  @Override
  public void close() throws IOException {
    List<Path> all;
    try (var files = Files.list(folder)) {
      all = files.toList();
    }
    for (Path file : all) {
      Files.delete(file);
    }
    Files.delete(folder);
  }
}

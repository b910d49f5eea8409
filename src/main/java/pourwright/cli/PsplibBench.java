package pourwright.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import pourwright.plan.PlanProblem;
import pourwright.plan.Planner;

/**
 * {@code bench psplib DIR [--seconds 60] [--workers 2]}: solves every instance of a folder through
 * the planner's own model and prints what the folder's {@code optimum.csv} says, what was found, if
 * it is proven, and in how many seconds.
 */
public final class PsplibBench {
  private static final String USAGE = "bench psplib DIR [--seconds 60] [--workers 2]";

  private final Planner planner;
  private final PrintStream out;

  /** A bench of this planner. */
  public PsplibBench(Planner planner, PrintStream out) {
    this.planner = planner;
    this.out = out;
  }

  private static final class Tally {
    private int all;
    private int proven;
    private int met;
    private int contradicted;
    private double worstGap;
  }

  /** Runs with the words after {@code psplib}; 0 when nothing contradicts the list. */
  public int run(List<String> words) throws IOException {
    List<String> rest = new ArrayList<>(words);
    int seconds = option(rest, "--seconds", 60);
    int workers = option(rest, "--workers", 2);
    if (rest.size() != 1
        || seconds < 1
        || workers < 1
        || !Files.isDirectory(Path.of(rest.get(0)))) {
      throw new RefusedInput("a folder of instances is needed", "", USAGE);
    }
    Path folder = Path.of(rest.get(0));
    Map<String, String> listed = listed(folder);
    Tally tally = new Tally();
    out.printf(
        Locale.ROOT, "%-14s %12s %8s %8s %10s%n", "instance", "listed", "found", "proven", "s");
    for (Path file : instances(folder)) {
      String name = String.valueOf(file.getFileName());
      one(file, listed.getOrDefault(name, ".."), seconds, workers, tally);
    }
    out.printf(
        Locale.ROOT,
        "%d instances, %d proven, %d as listed, %d against the list, largest gap %.1f %%%n",
        tally.all,
        tally.proven,
        tally.met,
        tally.contradicted,
        100 * tally.worstGap);
    return tally.contradicted == 0 ? 0 : 1;
  }

  private static int option(List<String> words, String name, int absent) {
    int at = words.indexOf(name);
    if (at < 0 || at + 1 >= words.size()) {
      return absent;
    }
    words.remove(at);
    try {
      return Integer.parseInt(words.remove(at));
    } catch (NumberFormatException e) {
      throw new RefusedInput(name + " must be a whole number", "", USAGE);
    }
  }

  private static Map<String, String> listed(Path folder) throws IOException {
    Map<String, String> listed = new HashMap<>();
    Path csv = folder.resolve("optimum.csv");
    if (Files.exists(csv)) {
      for (String line : Files.readAllLines(csv, StandardCharsets.UTF_8)) {
        int comma = line.indexOf(',');
        if (comma > 0) {
          listed.put(line.substring(0, comma).strip(), line.substring(comma + 1).strip());
        }
      }
    }
    return listed;
  }

  private static List<Path> instances(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> f.toString().toLowerCase(Locale.ROOT).matches(".*\\.(sm|sch)"))
          .sorted()
          .toList();
    }
  }

  private void one(Path file, String listed, int seconds, int workers, Tally tally)
      throws IOException {
    PlanProblem problem = ProjectFile.read(file);
    long from = System.nanoTime();
    Planner.Effort effort =
        new Planner.Effort(Duration.ofSeconds(seconds), 1, workers, null, plan -> {}, () -> false);
    Planner.Outcome outcome = planner.plan(problem, effort);
    double took = (System.nanoTime() - from) * 1e-9;
    String found = "none";
    boolean proven = outcome instanceof Planner.Impossible;
    tally.all++;
    if (outcome instanceof Planner.Planned planned) {
      long makespan = planned.plan().tardiness(problem);
      proven = planned.proven();
      found = proven ? "" + makespan : planned.boundMin() + ".." + makespan;
      judge(Bounds.of(listed), makespan, planned.boundMin(), tally);
    } else if (proven) {
      found = "unsat";
      tally.met += listed.equals("unsat") ? 1 : 0;
      tally.contradicted += listed.equals("unsat") ? 0 : 1;
    }
    tally.proven += proven ? 1 : 0;
    out.printf(
        Locale.ROOT,
        "%-14s %12s %8s %8s %10.2f%n",
        file.getFileName(),
        listed,
        found,
        proven ? "yes" : "no",
        took);
    out.flush();
  }

  private static void judge(Bounds listed, long makespan, long bound, Tally tally) {
    boolean against = makespan < listed.low || bound > listed.high;
    tally.contradicted += against ? 1 : 0;
    tally.met += !against && makespan <= listed.high ? 1 : 0;
    if (listed.high < Long.MAX_VALUE && listed.high > 0) {
      tally.worstGap = Math.max(tally.worstGap, (makespan - listed.high) / (double) listed.high);
    }
  }

  /** {@code 43}, {@code 96..103}, {@code ..108} or {@code unsat}. */
  private record Bounds(long low, long high) {
    static Bounds of(String text) {
      if (text.equals("unsat")) {
        return new Bounds(Long.MAX_VALUE, Long.MAX_VALUE);
      }
      int dots = text.indexOf("..");
      String low = dots < 0 ? text : text.substring(0, dots);
      String high = dots < 0 ? text : text.substring(dots + 2);
      return new Bounds(
          low.isEmpty() ? 0 : Long.parseLong(low),
          high.isEmpty() ? Long.MAX_VALUE : Long.parseLong(high));
    }
  }
}

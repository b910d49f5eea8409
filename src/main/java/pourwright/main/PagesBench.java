package pourwright.main;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import pourwright.cli.RefusedInput;

/**
 * {@code bench pages DIR [--seconds 180]}: opens the studio of a folder in a process of its own, by
 * the launcher where there is one, and reads its pages with 8 readers at one request a second each
 * while 2 writers write twice a second each: they set timers, answer them and count lots. They
 * begin spread over the second; each waits for its answer before it goes on. Before that the
 * readers read without a pause for a while, as a studio that has been open for a morning has been
 * read; this is not counted. Prints the times of each page and of writing, the throughput, and the
 * resident memory. At the end the units are changed there and back and a page is shown in them, by
 * one visitor alone.
 */
final class PagesBench {
  private static final String USAGE = "bench pages DIR [--seconds 180]";
  private static final int READERS = 8;
  private static final int WRITERS = 2;
  private static final long READ_EVERY_MS = 1000;
  private static final long WRITE_EVERY_MS = 500;
  private static final int SECONDS = 180;
  private static final int SECONDS_MAX = 3600;
  private static final int WARM_UP_S = 30;
  private static final double P95_MS = 50;
  private static final int CHANGES = 20;
  private static final String CHANGE = "(units)";

  /** A write with the page after it; its time is told, the bar is of pages. */
  private static final String WRITE = "(write)";

  /** From the change of units to the page shown anew. */
  private static final double CHANGE_MS = 100;

  private static final long RESIDENT_MB = 300;
  private static final List<String> PAGES =
      List.of(
          "/",
          "/orders",
          "/board",
          "/casting",
          "/pouring",
          "/shelf",
          "/stockroom",
          "/slate",
          "/press",
          "/plan",
          "/history",
          "/timers");

  private final PrintStream out;
  private final Map<String, Queue<Double>> times = new ConcurrentHashMap<>();
  private final Map<String, Integer> failed = new ConcurrentHashMap<>();

  PagesBench(PrintStream out) {
    this.out = out;
  }

  /** Runs with the words after {@code pages}; 0 when every budget is kept. */
  int run(List<String> words) throws IOException, InterruptedException {
    List<String> rest = new ArrayList<>(words);
    int seconds = seconds(rest);
    if (rest.size() != 1 || !Files.isDirectory(Path.of(rest.get(0)))) {
      throw new RefusedInput("a data folder is needed", "", USAGE);
    }
    Process studio = start(Path.of(rest.get(0)));
    try (BufferedReader said =
        new BufferedReader(
            new InputStreamReader(studio.getInputStream(), StandardCharsets.UTF_8))) {
      URI base = address(said);
      int warmUp = Math.min(WARM_UP_S, seconds);
      out.printf(
          Locale.ROOT,
          "%s; %d s of reading without a pause first, then %d s with %d readers and %d writers%n",
          launcher().map(l -> "by the launcher").orElse("without the launcher"),
          warmUp,
          seconds,
          READERS,
          WRITERS);
      out.flush();
      drive(base, warmUp, 0);
      times.clear();
      failed.clear();
      drive(base, seconds, READ_EVERY_MS);
      changeUnits(base);
      return report(seconds, memoryMb(studio.pid(), "VmRSS:"), memoryMb(studio.pid(), "VmHWM:"));
    } finally {
      studio.destroy();
      studio.waitFor(10, TimeUnit.SECONDS);
    }
  }

  private static int seconds(List<String> words) {
    int at = words.indexOf("--seconds");
    if (at < 0 || at + 1 >= words.size()) {
      return SECONDS;
    }
    words.remove(at);
    try {
      int seconds = Integer.parseInt(words.remove(at));
      if (seconds >= 1 && seconds <= SECONDS_MAX) {
        return seconds;
      }
    } catch (NumberFormatException e) {
      // said below, with the range
    }
    throw new RefusedInput("--seconds is a whole number from 1 to " + SECONDS_MAX, "", USAGE);
  }

  /** The launcher that this program was started by: it gives the flags and the class archive. */
  private static Optional<Path> launcher() {
    Path launcher = Path.of(System.getProperty("pourwright.home", ""), "pourwright");
    return Files.isExecutable(launcher) ? Optional.of(launcher) : Optional.empty();
  }

  private static Process start(Path folder) throws IOException {
    List<String> words = new ArrayList<>();
    launcher()
        .ifPresentOrElse(
            launcher -> words.add(launcher.toString()),
            () ->
                words.addAll(
                    List.of(
                        Path.of(System.getProperty("java.home", ""), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-Xss512k",
                        "-Xms64m",
                        "-Xmn24m",
                        "-Xmx192m",
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path", ""),
                        Main.class.getName())));
    words.addAll(List.of("--data", folder.toString(), "--port", "0", "--no-browser"));
    return new ProcessBuilder(words).redirectErrorStream(true).start();
  }

  private static URI address(BufferedReader said) throws IOException {
    List<String> heard = new ArrayList<>();
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      heard.add(line);
      int at = line.indexOf("http://");
      if (at >= 0) {
        return URI.create(line.substring(at).strip());
      }
    }
    throw new IOException("the studio did not start: " + String.join(" ", heard));
  }

  private void drive(URI base, int seconds, long readEveryMs) throws InterruptedException {
    long end = System.nanoTime() + seconds * 1_000_000_000L;
    List<Thread> threads = new ArrayList<>();
    for (int i = 0; i < READERS; i++) {
      int first = i;
      BenchVisitor visitor = new BenchVisitor(base, 0);
      threads.add(
          new Thread(
              () ->
                  repeat(
                      end,
                      readEveryMs * first / READERS,
                      readEveryMs,
                      n -> {
                        String page = PAGES.get((first + n) % PAGES.size());
                        timed(page, () -> visitor.get(page));
                      })));
    }
    for (int i = 0; i < WRITERS; i++) {
      int nth = i;
      BenchVisitor visitor = new BenchVisitor(base, i);
      threads.add(
          new Thread(
              () ->
                  repeat(
                      end,
                      WRITE_EVERY_MS * nth / WRITERS,
                      WRITE_EVERY_MS,
                      n -> timed(WRITE, () -> visitor.write(n)))));
    }
    threads.forEach(Thread::start);
    for (Thread thread : threads) {
      thread.join();
    }
  }

  /** Each page in ounces, inches and degrees F and back in metric, in which the studio is left. */
  private void changeUnits(URI base) {
    BenchVisitor visitor = new BenchVisitor(base, 0);
    for (int i = 0; i < CHANGES * 2; i++) {
      int nth = i;
      String page = PAGES.get(i / 2 % PAGES.size());
      timed(CHANGE, () -> visitor.changeUnits(nth, page));
    }
  }

  private interface Turn {
    void take(int nth);
  }

  private interface Ask {
    /** What was answered instead; empty where all is well. */
    Optional<String> wrong() throws IOException, InterruptedException;
  }

  private static void repeat(long end, long afterMillis, long everyMillis, Turn turn) {
    try {
      Thread.sleep(afterMillis); // people do not all press in the same millisecond
      for (int n = 0; System.nanoTime() < end; n++) {
        long from = System.nanoTime();
        turn.take(n);
        long left = everyMillis - (System.nanoTime() - from) / 1_000_000;
        Thread.sleep(Math.max(0, left));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void timed(String page, Ask ask) {
    long from = System.nanoTime();
    try {
      Optional<String> wrong = ask.wrong();
      if (wrong.isEmpty()) {
        times
            .computeIfAbsent(page, p -> new ConcurrentLinkedQueue<>())
            .add((System.nanoTime() - from) * 1e-6);
      } else {
        failed.merge(page + ": " + wrong.get(), 1, Integer::sum);
      }
    } catch (IOException e) {
      failed.merge(page + ": " + e, 1, Integer::sum);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private int report(int seconds, long residentMb, long mostMb) {
    out.printf(Locale.ROOT, "%-14s %6s %9s %9s %9s%n", "page", "n", "median", "p95", "max (ms)");
    boolean kept = failed.isEmpty();
    int all = 0;
    for (Map.Entry<String, Queue<Double>> page : new TreeMap<>(times).entrySet()) {
      double[] sorted = page.getValue().stream().mapToDouble(Double::doubleValue).toArray();
      Arrays.sort(sorted);
      double p95 = at(sorted, 0.95);
      all += sorted.length;
      kept &=
          page.getKey().equals(WRITE) || p95 < (page.getKey().equals(CHANGE) ? CHANGE_MS : P95_MS);
      out.printf(
          Locale.ROOT,
          "%-14s %6d %9.1f %9.1f %9.1f%n",
          page.getKey(),
          sorted.length,
          at(sorted, 0.5),
          p95,
          at(sorted, 1));
    }
    out.printf(
        Locale.ROOT,
        "%d requests in %d s, %.1f a second, %d failed; resident %s, %s at the most%n",
        all,
        seconds,
        all / (double) seconds,
        failed.values().stream().mapToInt(Integer::intValue).sum(),
        megabytes(residentMb),
        megabytes(mostMb));
    new TreeMap<>(failed)
        .forEach((what, n) -> out.printf(Locale.ROOT, "  failed %d x %s%n", n, what));
    out.printf(
        Locale.ROOT,
        "budget: p95 under %.0f ms on every page, %.0f ms from a change of units to the page, none"
            + " failed, resident under %d MB: %s%n",
        P95_MS,
        CHANGE_MS,
        RESIDENT_MB,
        kept && mostMb < RESIDENT_MB ? "kept" : "NOT kept");
    out.flush();
    return kept && mostMb < RESIDENT_MB ? 0 : 1;
  }

  private static double at(double[] sorted, double share) {
    return sorted[(int) Math.max(0, Math.ceil(share * sorted.length) - 1)];
  }

  private static String megabytes(long mb) {
    return mb < 0 ? "not known here" : mb + " MB";
  }

  /** Resident memory as the system counts it, now or at the most; -1 where it does not say. */
  private static long memoryMb(long pid, String line) {
    try {
      for (String each : Files.readAllLines(Path.of("/proc", "" + pid, "status"))) {
        if (each.startsWith(line)) {
          return Long.parseLong(each.replaceAll("[^0-9]", "")) / 1024;
        }
      }
    } catch (IOException e) {
      return -1;
    }
    return -1;
  }
}

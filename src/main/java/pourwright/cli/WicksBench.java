package pourwright.cli;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import pourwright.shape.Circle;
import pourwright.shape.Ellipse;
import pourwright.shape.Outline;
import pourwright.shape.Point;
import pourwright.shape.Stadium;
import pourwright.shape.Traced;
import pourwright.wick.WickLayout;
import pourwright.wick.WickLayout.Clearances;

/**
 * {@code bench wicks [--rounds 5]}: how long a wick layout takes in a warm program and how near its
 * reach comes to the best that is known, for five outlines and one to seven wicks, symmetric and
 * free, with and without clearances. The figure of a row is the slowest of the rounds after the
 * first; ms are of the processor, so a busy machine does not change them.
 */
public final class WicksBench {
  private static final String USAGE = "bench wicks [--rounds 5]";
  private static final double SLOW_MS = 200;
  private static final double WORSE = 1.02;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private final PrintStream out;

  /** A bench that prints there. */
  public WicksBench(PrintStream out) {
    this.out = out;
  }

  /**
   * An outline and the smallest reach known for 1 to 7 wicks, in mm: without clearances, and with 8
   * mm to the wall and 15 mm between flames. Circle and square without clearances: K. Bezdek
   * 1979/1983, G. Fejes Tóth; Tarnai and Gáspár 1995, Heppes and Melissen 1997. All else: the
   * smaller of the search by chance in the test tree (Reference, 24 walks) and of 500 free starts;
   * no proof that nothing is smaller.
   */
  private record Case(String name, Outline outline, double[] bare, double[] kept) {}

  private static List<Case> cases() {
    return List.of(
        new Case(
            "circle 100",
            new Circle(100),
            of(50, 50, 43.30127, 35.35534, 30.46915, 27.79525, 25),
            of(50, 50, 43.3052, 35.3554, 30.4731, 27.8002, 25.0364)),
        new Case(
            "ellipse 120 x 60",
            new Ellipse(120, 60),
            of(60, 37.5, 32.3087, 27.2736, 25.4385, 22.5295, 20.7038),
            of(60, 37.5, 32.3087, 27.3893, 25.4773, 22.5289, 20.7099)),
        new Case(
            "square 80",
            traced(0, 0, 80, 0, 80, 80, 0, 80),
            of(56.56854, 44.72136, 40.31129, 28.28427, 26.09290, 23.8983, 21.9435),
            of(56.5687, 44.7215, 40.7923, 28.2844, 26.0930, 23.8983, 22.2038)),
        new Case(
            "stadium 150 x 50",
            new Stadium(150, 50),
            of(75, 41.6668, 32.7352, 29.2793, 27.0835, 25.3888, 23.9870),
            of(75, 41.6668, 32.7352, 29.2793, 27.2523, 25.3888, 23.9895)),
        new Case(
            "L 90 x 90 x 30",
            traced(0, 0, 90, 0, 90, 30, 30, 30, 30, 90, 0, 90),
            of(67.0822, 47.4343, 28.8267, 26.0478, 21.2133, 20.0458, 18.4035),
            of(70.0245, 47.4343, 28.8267, 26.0633, 21.2133, 20.0518, 18.4035)));
  }

  private static double[] of(double... values) {
    return values;
  }

  private static Outline traced(double... xy) {
    return Traced.through(
        IntStream.range(0, xy.length / 2)
            .mapToObj(i -> new Point(xy[2 * i], xy[2 * i + 1]))
            .toList());
  }

  /** Runs with the words after {@code wicks}; 0 when all are in time and near enough. */
  public int run(List<String> words) {
    int rounds = rounds(words);
    out.println("reach over the best known (free), and ms of the processor; bars 1.02 and 200 ms");
    out.printf("%-18s %s %-30s %-30s%n", "outline", "n", "no clearances", "8 mm wall, 15 mm apart");
    out.printf("%-18s   %-15s%-16s%-15s%s%n", "", "symmetric", "free", "symmetric", "free");
    double[] worst = new double[3];
    for (Case outline : cases()) {
      for (int count = 1; count <= outline.bare().length; count++) {
        row(outline, count, rounds, worst);
      }
    }
    out.printf(
        Locale.ROOT,
        "slowest %.0f ms; free layouts at most %.4f of the best known, symmetric ones %.4f%n",
        worst[0],
        worst[1],
        worst[2]);
    return worst[0] < SLOW_MS && worst[1] < WORSE ? 0 : 1;
  }

  private static int rounds(List<String> words) {
    if (words.isEmpty()) {
      return 5;
    }
    if (words.size() != 2
        || !words.get(0).equals("--rounds")
        || !words.get(1).matches("[1-9]\\d?")) {
      throw new RefusedInput("'" + String.join(" ", words) + "' is not understood", "", USAGE);
    }
    return Integer.parseInt(words.get(1));
  }

  private void row(Case outline, int count, int rounds, double[] worst) {
    StringBuilder line = new StringBuilder();
    for (boolean clear : new boolean[] {false, true}) {
      double best = (clear ? outline.kept() : outline.bare())[count - 1];
      for (boolean symmetric : new boolean[] {true, false}) {
        Clearances clearances = new Clearances(clear ? 8 : 0, clear ? 15 : 0, symmetric);
        double ms = 0;
        double ratio = 0;
        for (int round = 0; round <= rounds; round++) {
          long from = THREADS.getCurrentThreadCpuTime();
          WickLayout layout = WickLayout.of(outline.outline(), clearances, count);
          double took = (THREADS.getCurrentThreadCpuTime() - from) * 1e-6;
          ms = round == 0 ? 0 : Math.max(ms, took);
          ratio = layout.coveringRadiusMm() / best;
        }
        line.append(String.format(Locale.ROOT, "%.4f %4.0f ms  ", ratio, ms));
        worst[0] = Math.max(worst[0], ms);
        worst[symmetric ? 2 : 1] = Math.max(worst[symmetric ? 2 : 1], ratio);
      }
    }
    out.printf("%-18s %d %s%n", outline.name(), count, line);
  }
}

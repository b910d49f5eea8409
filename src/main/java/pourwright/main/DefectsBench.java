package pourwright.main;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import pourwright.cast.DefectHistories;
import pourwright.cli.RefusedInput;

/**
 * {@code bench defects [--seeds 1000]}: how often a planted cause of a defect is found and how
 * often one is invented, over made-up histories.
 */
final class DefectsBench {
  private static final String USAGE = "bench defects [--seeds 1000]";
  private static final double FOUND_LEAST = 0.90;
  private static final double INVENTED_MOST = 0.065;

  private final PrintStream out;

  DefectsBench(PrintStream out) {
    this.out = out;
  }

  /** Runs with the words after {@code defects}; 0 when both shares are kept. */
  int run(List<String> words) {
    DefectHistories.Tally tally = DefectHistories.tally(seeds(words));
    int most = (int) Math.floor(INVENTED_MOST * tally.histories());
    out.printf(
        Locale.ROOT,
        "planted odds of 4: found in %d of %d (at least %.0f %%)%n",
        tally.found(),
        tally.histories(),
        100 * FOUND_LEAST);
    out.printf(
        Locale.ROOT,
        "no cause: a finding in %d of %d (at most %d)%n",
        tally.invented(),
        tally.histories(),
        most);
    boolean kept = tally.found() >= FOUND_LEAST * tally.histories() && tally.invented() <= most;
    return kept ? 0 : 1;
  }

  private static int seeds(List<String> words) {
    if (words.isEmpty()) {
      return 1000;
    }
    if (words.size() != 2
        || !words.get(0).equals("--seeds")
        || !words.get(1).matches("[1-9]\\d{0,5}")) {
      throw new RefusedInput("'" + String.join(" ", words) + "' is not understood", "", USAGE);
    }
    return Integer.parseInt(words.get(1));
  }
}

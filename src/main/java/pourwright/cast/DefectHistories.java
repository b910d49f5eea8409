package pourwright.cast;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import pourwright.cast.DefectCauses.Finding;
import pourwright.cast.DefectCauses.Seen;

/**
 * Made-up histories of casts with a known cause or none, to see how often {@link DefectCauses}
 * finds what is there and invents what is not: 300 casts, base rate 10 %, each of ten conditions
 * held by 40 % of the casts.
 */
public final class DefectHistories {
  private static final int CASTS = 300;
  private static final int CONDITIONS = 10;
  private static final double EXPOSED = 0.4;
  private static final double BASE_RATE = 0.10;
  private static final String CAUSE = "condition 0";

  private DefectHistories() {}

  /**
   * What came of looking at some histories.
   *
   * @param histories of each kind that were looked at
   * @param found of those with odds of four planted, how many gave that cause as a finding
   * @param invented of those without a cause, how many gave any finding
   */
  public record Tally(int histories, int found, int invented) {}

  /** One history; the first condition carries the odds ratio, 1 for no cause at all. */
  public static List<Seen> history(long seed, double oddsRatio) {
    SplittableRandom random = new SplittableRandom(seed);
    double odds = BASE_RATE / (1 - BASE_RATE) * oddsRatio;
    List<Seen> casts = new ArrayList<>();
    for (int i = 0; i < CASTS; i++) {
      Set<String> conditions = new HashSet<>();
      for (int c = 0; c < CONDITIONS; c++) {
        if (random.nextDouble() < EXPOSED) {
          conditions.add("condition " + c);
        }
      }
      double rate = conditions.contains(CAUSE) ? odds / (1 + odds) : BASE_RATE;
      casts.add(new Seen(random.nextDouble() < rate, conditions));
    }
    return casts;
  }

  /** Looks at the histories of seeds 1 to {@code seeds}, with odds of four and without a cause. */
  public static Tally tally(int seeds) {
    int found = 0;
    int invented = 0;
    for (int seed = 1; seed <= seeds; seed++) {
      if (DefectCauses.look(history(seed, 4)).stream()
          .anyMatch(f -> f.found() && f.condition().equals(CAUSE))) {
        found++;
      }
      if (DefectCauses.look(history(seed, 1)).stream().anyMatch(Finding::found)) {
        invented++;
      }
    }
    return new Tally(seeds, found, invented);
  }
}

package pourwright.cast;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;

/**
 * How many casts molds last, from molds that failed and molds that still serve.
 *
 * <p>Source: Kaplan and Meier, J. Am. Stat. Assoc. 53 (1958) 457; standard errors by Greenwood
 * (1926).
 */
public final class MoldLife {
  private MoldLife() {}

  /**
   * One mold.
   *
   * @param casts it has served, above zero
   * @param failed whether it was retired for wear; false when it still serves
   */
  public record Served(int casts, boolean failed) {
    /** Checks the count. */
    public Served {
      Check.between("casts", casts, 1, 1_000_000);
    }
  }

  /**
   * The share of molds still good after so many casts.
   *
   * @param casts at which some failed
   * @param share still good from here
   * @param error one standard error
   * @param atRisk molds that had come this far
   */
  public record Step(int casts, double share, double error, int atRisk) {}

  /** The curve, a step for each number of casts at which molds failed. */
  public static List<Step> curve(List<Served> molds) {
    TreeSet<Integer> times = new TreeSet<>();
    molds.stream().filter(Served::failed).forEach(m -> times.add(m.casts()));
    List<Step> steps = new ArrayList<>();
    double share = 1;
    double variance = 0;
    for (int casts : times) {
      int atRisk = (int) molds.stream().filter(m -> m.casts() >= casts).count();
      int failed = (int) molds.stream().filter(m -> m.failed() && m.casts() == casts).count();
      share *= 1 - (double) failed / atRisk;
      variance += atRisk == failed ? 0 : (double) failed / ((double) atRisk * (atRisk - failed));
      steps.add(new Step(casts, share, share * Math.sqrt(variance), atRisk));
    }
    return steps;
  }

  /** Casts by which half the molds have failed; null while fewer than half did. */
  public static @Nullable Integer median(List<Served> molds) {
    return curve(molds).stream()
        .filter(s -> s.share() <= 0.5)
        .map(Step::casts)
        .findFirst()
        .orElse(null);
  }
}

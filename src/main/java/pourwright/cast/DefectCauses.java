package pourwright.cast;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hipparchus.special.Gamma;
import pourwright.quantity.Check;

/**
 * Which recorded conditions go with a defect, in her own casts. A condition that goes with a defect
 * is not yet its cause.
 *
 * <p>Each condition is tested by Fisher's exact test, two-sided, summing all tables no likelier
 * than the one seen; the p-values are corrected for many looks by Holm (1979), which keeps the
 * chance of any false finding at the level. The odds ratio's interval is Woolf's with half a case
 * added to each cell (Haldane, Anscombe). Maths: docs/models/cast.md.
 */
public final class DefectCauses {
  /** Chance of any false finding that is accepted. */
  public static final double LEVEL = 0.05;

  /** House: fewer pieces with the defect than this carry no finding at all. */
  public static final int CASES_MIN = 5;

  private static final double NORMAL_95 = 1.959963985;

  private DefectCauses() {}

  /**
   * One cast as it is counted.
   *
   * @param defect whether it had the defect
   * @param conditions the conditions that held for it, such as "over 25 °C"
   */
  public record Seen(boolean defect, Set<String> conditions) {
    /** Copies. */
    public Seen {
      conditions = Set.copyOf(conditions);
    }
  }

  /**
   * What the counts say of a condition.
   *
   * @param condition its name
   * @param withDefect casts under it that had the defect
   * @param with casts under it
   * @param withoutDefect other casts that had the defect
   * @param without other casts
   * @param oddsRatio odds under it over odds without it
   * @param low of the 95 % interval
   * @param high of the 95 % interval
   * @param p of this test alone
   * @param corrected p corrected for all conditions looked at
   * @param found whether it is a finding
   */
  public record Finding(
      String condition,
      int withDefect,
      int with,
      int withoutDefect,
      int without,
      double oddsRatio,
      double low,
      double high,
      double p,
      double corrected,
      boolean found) {}

  /** Looks at every condition that some casts had and some had not, the likeliest first. */
  public static List<Finding> look(List<Seen> casts) {
    Set<String> names = new TreeSet<>();
    casts.forEach(c -> names.addAll(c.conditions()));
    List<Finding> raw = new ArrayList<>();
    for (String name : names) {
      int[] n = counts(casts, name);
      if (n[1] > 0 && n[3] > 0) {
        raw.add(alone(name, n));
      }
    }
    raw.sort(Comparator.comparingDouble(Finding::p));
    long cases = casts.stream().filter(Seen::defect).count();
    List<Finding> corrected = new ArrayList<>();
    double floor = 0;
    for (int i = 0; i < raw.size(); i++) {
      Finding f = raw.get(i);
      floor = Math.min(1, Math.max(floor, f.p * (raw.size() - i)));
      corrected.add(withCorrected(f, floor, floor < LEVEL && cases >= CASES_MIN));
    }
    return corrected;
  }

  private static int[] counts(List<Seen> casts, String name) {
    int[] n = new int[4];
    for (Seen cast : casts) {
      int at = cast.conditions().contains(name) ? 0 : 2;
      n[at] += cast.defect() ? 1 : 0;
      n[at + 1]++;
    }
    return n;
  }

  private static Finding alone(String name, int[] n) {
    double a = n[0] + 0.5;
    double b = n[1] - n[0] + 0.5;
    double c = n[2] + 0.5;
    double d = n[3] - n[2] + 0.5;
    double log = Math.log(a * d / (b * c));
    double half = NORMAL_95 * Math.sqrt(1 / a + 1 / b + 1 / c + 1 / d);
    double p = fisher(n[0], n[1], n[2], n[3]);
    return new Finding(
        name,
        n[0],
        n[1],
        n[2],
        n[3],
        Math.exp(log),
        Math.exp(log - half),
        Math.exp(log + half),
        p,
        p,
        false);
  }

  private static Finding withCorrected(Finding f, double corrected, boolean found) {
    return new Finding(
        f.condition,
        f.withDefect,
        f.with,
        f.withoutDefect,
        f.without,
        f.oddsRatio,
        f.low,
        f.high,
        f.p,
        corrected,
        found);
  }

  /**
   * Fisher's exact test, two-sided. Source: Fisher (1935), The Design of Experiments.
   *
   * @param caseA cases among {@code allA}
   * @param caseB cases among {@code allB}
   */
  public static double fisher(int caseA, int allA, int caseB, int allB) {
    Check.between("cases", caseA, 0, allA);
    Check.between("cases", caseB, 0, allB);
    int cases = caseA + caseB;
    double seen = logChance(caseA, allA, cases, allB);
    double sum = 0;
    for (int x = Math.max(0, cases - allB); x <= Math.min(allA, cases); x++) {
      double chance = logChance(x, allA, cases, allB);
      sum += chance <= seen + 1e-7 ? Math.exp(chance) : 0;
    }
    return Math.min(1, sum);
  }

  private static double logChance(int x, int allA, int cases, int allB) {
    return choose(allA, x) + choose(allB, cases - x) - choose(allA + allB, cases);
  }

  private static double choose(int n, int k) {
    return Gamma.logGamma(n + 1.0) - Gamma.logGamma(k + 1.0) - Gamma.logGamma(n - k + 1.0);
  }
}

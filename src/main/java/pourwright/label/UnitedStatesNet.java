package pourwright.label;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pourwright.label.NetContents.Verdict;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;

/**
 * The lot test of NIST Handbook 133, category A: the average requirement with the sample correction
 * factor of Table 2-1 and the maximum allowable variation of Table 2-5. Nothing is rounded before
 * the comparison.
 */
public final class UnitedStatesNet {
  private static final double TEN_PER_CENT_BELOW_G = 36;
  private static final Map<Integer, Double> FACTORS = factors();
  private static final List<Map<String, String>> ALLOWANCES =
      DataRows.of("allowable_shortfall.csv", ",");

  private UnitedStatesNet() {}

  private static Map<Integer, Double> factors() {
    Map<Integer, Double> factors = new HashMap<>();
    for (Map<String, String> row : DataRows.of("sample_correction.csv", ",")) {
      factors.put(
          Integer.valueOf(row.getOrDefault("packages", "")),
          Double.valueOf(row.getOrDefault("factor", "")));
    }
    return factors;
  }

  /** Packages to weigh from a lot of this size. */
  public static int sampleSize(int lotSize) {
    if (lotSize < 12) {
      return lotSize;
    }
    if (lotSize <= 250) {
      return 12;
    }
    return lotSize <= 3200 ? 24 : 48;
  }

  /** The factor of Table 2-1 for the printed sizes, else t(0.975)/√n, on which it stands. */
  static double factor(int size) {
    return FACTORS.getOrDefault(size, size < 2 ? 0 : NetSample.factor(0.975, size));
  }

  /**
   * Maximum allowable variation for a labelled weight, g.
   *
   * @throws OutOfRange above 6,480 g, where the figures are not held here
   */
  public static double allowance(double labelG) {
    if (labelG < TEN_PER_CENT_BELOW_G) {
      return labelG / 10;
    }
    for (Map<String, String> row : ALLOWANCES) {
      if (labelG <= Double.parseDouble(row.getOrDefault("up_to_g", ""))) {
        return Double.parseDouble(row.getOrDefault("allowance_g", ""));
      }
    }
    throw new OutOfRange(
        "label_g",
        "the allowance for more than 6,480 g is not held here",
        "look it up in NIST Handbook 133, Table 2-5");
  }

  /** The verdict on the lot. */
  public static NetContents judge(NetSample sample) {
    double allowance = allowance(sample.labelG());
    int beyond = sample.beyond(allowance);
    int allowed = sample.lotSize() > 3200 ? 1 : 0;
    double average = sample.averageError();
    boolean single = sample.size() == 1;
    double limit = factor(sample.size()) * sample.standardDeviation();
    boolean averageOk = single || average >= -1e-9 || -average <= limit + 1e-9;
    List<String> warnings = warnings(sample);
    List<String> reasons = new ArrayList<>();
    reasons.add(
        Counted.of(beyond, "of " + sample.size() + " lies", "of " + sample.size() + " lie")
            + " more than "
            + Amounts.grams(allowance)
            + " below the label; allowed: "
            + allowed
            + " (NIST Handbook 133 Tables 2-1 and 2-5)");
    if (!single) {
      reasons.add(
          "the mean lies "
              + Amounts.grams(Math.abs(average))
              + (average < 0 ? " below" : " above")
              + " the label; it may lie "
              + Amounts.grams(limit)
              + " below (factor "
              + Amounts.plain(factor(sample.size()))
              + ", NIST Handbook 133 Table 2-1)");
    }
    boolean tooSmall = sample.size() < sampleSize(sample.lotSize());
    Verdict passing = tooSmall ? null : Verdict.PASS;
    Verdict failing = beyond > allowed ? Verdict.FAIL_INDIVIDUAL : Verdict.FAIL_AVERAGE;
    return new NetContents(
        average,
        single ? null : Double.valueOf(sample.standardDeviation()),
        single ? null : Double.valueOf(limit),
        allowance,
        beyond,
        averageOk && beyond <= allowed ? passing : failing,
        reasons,
        warnings);
  }

  private static List<String> warnings(NetSample sample) {
    List<String> warnings = new ArrayList<>();
    int asked = sampleSize(sample.lotSize());
    if (sample.size() < asked) {
      warnings.add(
          "a lot of "
              + sample.lotSize()
              + " asks for "
              + Counted.of(asked, "package", "packages")
              + " and "
              + Counted.of(sample.size(), "was weighed", "were weighed")
              + ": this cannot be a pass");
    }
    if (sample.labelG() > 2630) {
      warnings.add("the allowance for this weight is from memory and unchecked");
    }
    return warnings;
  }
}

package pourwright.label;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pourwright.label.NetContents.Verdict;
import pourwright.quantity.Check;
import pourwright.quantity.Counted;

/**
 * The average quantity system of Directive 76/211/EEC, for packages of 5 g to 10 kg that bear the
 * sign e: tolerable negative error of Annex I 2.4 (percentages rounded up to 0.1 g), none beyond
 * twice that, attributes plan and average test of Annex II with t(0.995).
 */
public final class EuropeanNet {
  private EuropeanNet() {}

  private record Plan(int first, int accept, int reject, int all, int acceptAll) {}

  /**
   * Tolerable negative error, g.
   *
   * @param labelG nominal quantity, 5 to 10,000 g
   */
  public static double tolerableError(double labelG) {
    Check.between("label_g", labelG, 5, 10_000);
    if (labelG <= 50) {
      return percent(labelG, "0.09");
    }
    if (labelG <= 100) {
      return 4.5;
    }
    if (labelG <= 200) {
      return percent(labelG, "0.045");
    }
    if (labelG <= 300) {
      return 9;
    }
    if (labelG <= 500) {
      return percent(labelG, "0.03");
    }
    return labelG <= 1000 ? 15 : percent(labelG, "0.015");
  }

  private static double percent(double labelG, String fraction) {
    return BigDecimal.valueOf(labelG)
        .multiply(new BigDecimal(fraction))
        .setScale(1, RoundingMode.CEILING)
        .doubleValue();
  }

  /** The attributes plan, not destructive (from memory); below 100 every package is weighed. */
  private static Plan plan(int lotSize) {
    if (lotSize < 100) {
      int allowed = (int) Math.floor(lotSize * 0.025);
      return new Plan(lotSize, allowed, allowed + 1, lotSize, allowed);
    }
    if (lotSize <= 500) {
      return new Plan(30, 1, 3, 60, 4);
    }
    return lotSize <= 3200 ? new Plan(50, 2, 5, 100, 6) : new Plan(80, 3, 7, 160, 8);
  }

  /** Packages to weigh from a lot of this size, first sample. */
  public static int sampleSize(int lotSize) {
    return plan(lotSize).first();
  }

  /** The verdict on the lot. */
  public static NetContents judge(NetSample sample) {
    double tolerable = tolerableError(sample.labelG());
    Plan plan = plan(sample.lotSize());
    int beyond = sample.beyond(tolerable);
    int farBeyond = sample.beyond(2 * tolerable);
    boolean single = sample.size() == 1;
    double limit = single ? 0 : NetSample.factor(0.995, sample.size()) * sample.standardDeviation();
    double average = sample.averageError();
    List<String> reasons = reasons(sample, tolerable, plan, limit);
    List<String> warnings = new ArrayList<>();
    boolean averageOk = single || average >= -limit - 1e-9;
    int reject = sample.size() >= plan.all() ? plan.acceptAll() + 1 : plan.reject();
    boolean individualFails = farBeyond > 0 || beyond >= reject;
    Verdict verdict;
    if (individualFails) {
      verdict = Verdict.FAIL_INDIVIDUAL;
    } else if (!averageOk) {
      verdict = Verdict.FAIL_AVERAGE;
    } else {
      verdict = passing(sample, plan, beyond, warnings);
    }
    return new NetContents(
        average,
        single ? null : Double.valueOf(sample.standardDeviation()),
        single ? null : Double.valueOf(limit),
        tolerable,
        beyond,
        verdict,
        reasons,
        warnings);
  }

  private static @Nullable Verdict passing(
      NetSample sample, Plan plan, int beyond, List<String> warnings) {
    if (sample.size() < plan.first()) {
      warnings.add(
          "a lot of "
              + sample.lotSize()
              + " asks for "
              + Counted.of(plan.first(), "package", "packages")
              + " and "
              + Counted.of(sample.size(), "was weighed", "were weighed")
              + ": this cannot be a pass");
      return null;
    }
    if (sample.size() < plan.all() && beyond > plan.accept()) {
      warnings.add(
          Counted.of(beyond, "package lies", "packages lie")
              + " beyond the tolerable error: weigh a second sample, "
              + plan.all()
              + " packages in all, before the lot passes");
      return null;
    }
    return Verdict.PASS;
  }

  private static List<String> reasons(NetSample sample, double tolerable, Plan plan, double limit) {
    List<String> reasons = new ArrayList<>();
    reasons.add(
        Counted.of(
                sample.beyond(tolerable),
                "of " + sample.size() + " lies",
                "of " + sample.size() + " lie")
            + " more than "
            + Amounts.grams(tolerable)
            + " below the label; up to "
            + (sample.size() >= plan.all() ? plan.acceptAll() : plan.accept())
            + " pass (Directive 76/211/EEC Annex II, plan from memory)");
    reasons.add(
        Counted.of(sample.beyond(2 * tolerable), "lies more than ", "lie more than ")
            + Amounts.grams(2 * tolerable)
            + " below; none may bear the sign e (Annex I 1)");
    reasons.add(
        "the mean lies "
            + Amounts.grams(Math.abs(sample.averageError()))
            + (sample.averageError() < 0 ? " below" : " above")
            + " the label; it may lie "
            + Amounts.grams(limit)
            + " below (Annex II 2.3)");
    return reasons;
  }
}

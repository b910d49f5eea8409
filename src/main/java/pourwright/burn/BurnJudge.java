package pourwright.burn;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.burn.BurnRules.Kind;
import pourwright.burn.BurnRules.Limit;
import pourwright.burn.Verdict.Finding;
import pourwright.burn.Verdict.Outcome;
import pourwright.quantity.Counted;

/**
 * Judges burn tests by a set of rules. A broken limit fails, whatever else is missing; a pass needs
 * every needed reading in every sample, enough samples, and every life burnt to its end.
 */
public final class BurnJudge {
  private final BurnRules rules;
  private final List<TestSample> samples;
  private final List<Finding> broken = new ArrayList<>();
  private final List<Finding> missing = new ArrayList<>();
  private final List<Finding> nearest = new ArrayList<>();

  private BurnJudge(BurnRules rules, List<TestSample> samples) {
    this.rules = rules;
    this.samples = samples;
  }

  /** A reading of the limit that is looked at, and where it was read. */
  private record Read(double value, int sample, String where) {}

  /** The verdict on samples. */
  public static Verdict judge(BurnRules rules, List<TestSample> samples) {
    return new BurnJudge(rules, samples).verdict();
  }

  private Verdict verdict() {
    for (Limit limit : rules.limits()) {
      hold(limit, readings(limit.reading()));
    }
    ends();
    if (samples.size() < rules.samplesMin()) {
      missing.add(
          new Finding(
              "number of samples",
              (double) samples.size(),
              (double) rules.samplesMin(),
              "house",
              "the test",
              samples.size() + " of at least " + rules.samplesMin() + " samples were burnt"));
    }
    if (!broken.isEmpty()) {
      return new Verdict(Outcome.FAIL, broken);
    }
    return missing.isEmpty()
        ? new Verdict(Outcome.PASS, nearest)
        : new Verdict(Outcome.NOT_ENOUGH_EVIDENCE, missing);
  }

  private List<Read> readings(String name) {
    List<Read> found = new ArrayList<>();
    for (int s = 0; s < samples.size(); s++) {
      List<TestSample.Cycle> cycles = samples.get(s).cycles();
      for (int c = 0; c < cycles.size(); c++) {
        for (Reading reading : cycles.get(c).readings()) {
          Double value = reading.values().get(name);
          if (value != null) {
            String where =
                String.format(
                    Locale.ROOT,
                    "%s, cycle %d, minute %s",
                    name(s),
                    cycles.get(c).number() > 0 ? cycles.get(c).number() : c + 1,
                    plain(reading.minute()));
            found.add(new Read(value, s, where));
          }
        }
      }
    }
    return found;
  }

  private void hold(Limit limit, List<Read> reads) {
    if (limit.needed()) {
      for (int s = 0; s < samples.size(); s++) {
        int sample = s;
        if (reads.stream().noneMatch(r -> r.sample == sample)) {
          miss(limit, name(s));
        }
      }
    }
    if (reads.isEmpty()) {
      return;
    }
    if (limit.kind() == Kind.MEAN_AT_MOST) {
      double mean = reads.stream().mapToDouble(Read::value).average().orElseThrow();
      note(limit, new Read(mean, 0, "mean of " + Counted.of(reads.size(), "reading", "readings")));
      return;
    }
    Read largest = reads.get(0);
    for (Read read : reads) {
      largest = read.value > largest.value ? read : largest;
      if (read.value > limit.limit()) {
        note(limit, read);
      }
    }
    if (largest.value <= limit.limit()) {
      note(limit, largest);
    }
  }

  private void note(Limit limit, Read read) {
    boolean kept = read.value <= limit.limit();
    String words = kept ? "kept: " + limit.words() : "broken: " + limit.words();
    String sentence = words + "; read " + plain(read.value) + " (" + read.where + ")";
    Double number = limit.kind() == Kind.NEVER ? null : Double.valueOf(limit.limit());
    Finding finding =
        new Finding(limit.rule(), read.value, number, limit.source(), read.where, sentence);
    (kept ? nearest : broken).add(finding);
  }

  private void miss(Limit limit, String where) {
    missing.add(
        new Finding(
            limit.rule(),
            null,
            limit.limit(),
            limit.source(),
            where,
            "no " + limit.rule() + " was read in " + where));
  }

  private String name(int sample) {
    String own = samples.get(sample).name();
    return "sample " + (own.isEmpty() ? String.valueOf(sample + 1) : own);
  }

  private void ends() {
    for (int s = 0; s < samples.size(); s++) {
      TestSample.End end = samples.get(s).end();
      String where = name(s);
      String words =
          end == TestSample.End.NOT_YET ? "not burnt to its end yet" : end.word().replace('_', ' ');
      Finding finding =
          new Finding(
              "end of life",
              null,
              null,
              "ASTM F2417 and EN 15493, end of useful life, from memory; here needed for every pass",
              where,
              where + ": " + words);
      (end.isBad() ? broken : end.isGood() ? nearest : missing).add(finding);
    }
  }

  private static String plain(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.2f", value);
  }
}

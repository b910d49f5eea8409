package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import pourwright.burn.BurnJudge;
import pourwright.burn.BurnRules;
import pourwright.burn.Evidence;
import pourwright.burn.Reading;
import pourwright.burn.TestSample;
import pourwright.burn.Verdict;
import pourwright.quantity.OutOfRange;

/** {@code verdict}: burn tests held against a set of rules. */
final class VerdictComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    BurnRules rules = rules(in);
    List<TestSample> samples = new ArrayList<>();
    for (JsonIn sample : in.objects("samples", true)) {
      samples.add(sample(sample));
    }
    Verdict verdict = BurnJudge.judge(rules, samples);
    out.put("verdict", verdict.outcome().word());
    ArrayNode reasons = out.putArray("reasons");
    for (Verdict.Finding finding : verdict.findings()) {
      ObjectNode reason = reasons.addObject();
      reason.put("rule", finding.rule());
      reason.put("reading", finding.reading());
      reason.put("limit", finding.limit());
      reason.put("source", finding.source());
      reason.put("where", finding.where());
      reason.put("sentence", finding.sentence());
    }
    if (verdict.outcome() == Verdict.Outcome.PASS) {
      out.put("evidence", Evidence.sentence(samples.size(), samples.size()));
    }
    if (rules.samplesMin() < 3 && samples.size() < 3) {
      out.withArray("warnings")
          .add(
              "how many samples this standard asks for is not verified here; the house asks for 3");
    }
  }

  private static BurnRules rules(JsonIn in) {
    if (in.isText("rules")) {
      String id = in.text("rules");
      try {
        return BurnRules.named(id);
      } catch (OutOfRange e) {
        throw in.refuse(e);
      }
    }
    JsonIn own = in.object("rules");
    String id = own.textOr("id", "own");
    int samples = own.wholeOr("samples_min", 3, 1, 1000);
    List<BurnRules.Limit> limits = new ArrayList<>();
    for (JsonIn limit : own.objects("limits", true)) {
      limits.add(limit(limit));
    }
    return new BurnRules(id, samples, limits);
  }

  private static BurnRules.Limit limit(JsonIn in) {
    String rule = in.text("rule");
    String reading = in.choice("reading", new TreeSet<>(Reading.NAMES).toArray(String[]::new));
    String kind = in.choiceOr("kind", "at_most", "at_most", "mean_at_most", "never");
    double limit =
        kind.equals("never")
            ? in.numberOr("limit", 0, Range.NOT_NEGATIVE)
            : in.number("limit", Range.NOT_NEGATIVE);
    boolean needed = in.flagOr("needed", true);
    String words = in.textOr("words", reading + " at or under " + limit);
    String source = in.textOr("source", "house");
    return new BurnRules.Limit(
        rule,
        reading,
        BurnRules.Kind.valueOf(kind.toUpperCase(Locale.ROOT)),
        limit,
        needed,
        words,
        source);
  }

  private static TestSample sample(JsonIn in) {
    List<TestSample.Cycle> cycles = new ArrayList<>();
    for (JsonIn cycle : in.objects("cycles", true)) {
      List<Reading> readings = new ArrayList<>();
      for (JsonIn reading : cycle.objects("readings", true)) {
        readings.add(reading(reading));
      }
      cycles.add(new TestSample.Cycle(readings));
    }
    return new TestSample(cycles, end(in));
  }

  private static TestSample.End end(JsonIn in) {
    if (in.isFlag("ended")) {
      return in.flagOr("ended", false) ? TestSample.End.SELF_EXTINGUISHED : TestSample.End.NOT_YET;
    }
    String[] words =
        Arrays.stream(TestSample.End.values()).map(TestSample.End::word).toArray(String[]::new);
    String word = in.choiceOr("ended", TestSample.End.NOT_YET.word(), words);
    return TestSample.End.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private static Reading reading(JsonIn in) {
    double minute = in.number("minute", Range.NOT_NEGATIVE);
    Map<String, Double> values = new LinkedHashMap<>();
    for (String name : new TreeSet<>(Reading.NAMES)) {
      if (in.isFlag(name)) {
        values.put(name, in.flagOr(name, false) ? 1.0 : 0.0);
      } else if (in.has(name)) {
        values.put(name, in.number(name, name.endsWith("_c") ? Range.CELSIUS : Range.NOT_NEGATIVE));
      } else {
        in.textOrNull(name);
      }
    }
    try {
      return new Reading(minute, values);
    } catch (OutOfRange e) {
      throw in.refuse(e);
    }
  }
}

package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.burn.TestSample.Cycle;
import pourwright.burn.TestSample.End;
import pourwright.burn.Verdict.Outcome;
import pourwright.quantity.OutOfRange;

/** Limits are those of data/burn_rules.csv, each with its source there. */
class VerdictTest {
  private static final Map<String, Double> CALM =
      Map.of("flame_height_mm", 40.0, "wall_c", 45.0, "after_smoke_s", 10.0, "base_c", 30.0);

  private static List<TestSample> three(Map<String, Double> last, End end) {
    List<TestSample> samples = new ArrayList<>();
    for (int s = 0; s < 3; s++) {
      Reading calm = new Reading(60, CALM);
      Reading other = new Reading(240, s == 2 ? last : CALM);
      Cycle cycle = new Cycle(List.of(calm, other));
      samples.add(new TestSample(List.of(cycle, cycle), end));
    }
    return samples;
  }

  private static Outcome outcome(String rules, Map<String, Double> last, End end) {
    return BurnJudge.judge(BurnRules.named(rules), three(last, end)).outcome();
  }

  @ParameterizedTest
  @CsvSource({
    "astm-f2417, flame_height_mm, 76, PASS",
    "astm-f2417, flame_height_mm, 76.1, PASS",
    "astm-f2417, flame_height_mm, 76.2, PASS",
    "astm-f2417, flame_height_mm, 76.3, FAIL",
    "astm-f2417, flame_height_mm, 77, FAIL",
    "en-15493, flame_height_mm, 74.9, PASS",
    "en-15493, flame_height_mm, 75, PASS",
    "en-15493, flame_height_mm, 75.1, FAIL",
    "en-15493, flame_height_mm, 76, FAIL",
    "house, flame_height_mm, 75, PASS",
    "house, flame_height_mm, 75.1, FAIL",
    "astm-f2417, secondary_ignition_s, 0, PASS",
    "astm-f2417, secondary_ignition_s, 0.5, FAIL",
    "en-15493, secondary_ignition_s, 9.9, PASS",
    "en-15493, secondary_ignition_s, 10, PASS",
    "en-15493, secondary_ignition_s, 10.1, FAIL",
    "house, secondary_ignition_s, 1, FAIL",
    "astm-f2417, crack, 0, PASS",
    "astm-f2417, crack, 1, FAIL",
    "en-15493, crack, 1, FAIL",
    "house, crack, 1, FAIL",
    "house, seep, 0, PASS",
    "house, seep, 1, FAIL",
    "house, smoke, 1, FAIL",
    "house, wall_c, 59.9, PASS",
    "house, wall_c, 60, PASS",
    "house, wall_c, 60.1, FAIL",
    "house, base_c, 60, PASS",
    "house, base_c, 60.1, FAIL",
    "house, soot, 1, PASS",
    "house, soot, 2, FAIL"
  })
  void eachLimitIsJudgedAtUnderAndOver(String rules, String reading, double value, Outcome said) {
    Map<String, Double> last = new HashMap<>(CALM);
    last.put(reading, value);
    assertThat(outcome(rules, last, End.SELF_EXTINGUISHED)).isEqualTo(said);
  }

  /** EN 15493:2019: the mean of all after-smoke times counts, 30 s. */
  @ParameterizedTest
  @CsvSource({"249, PASS", "250, PASS", "251, FAIL"})
  void afterSmokeIsJudgedByTheMeanOfAllReadings(double last, Outcome said) {
    Map<String, Double> values = new HashMap<>(CALM);
    values.put("after_smoke_s", (last - 100) / 2 + 55);
    assertThat(outcome("en-15493", values, End.STOP_DEPTH)).isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource({
    "NOT_YET, NOT_ENOUGH_EVIDENCE",
    "STOPPED_EARLY, NOT_ENOUGH_EVIDENCE",
    "SELF_EXTINGUISHED, PASS",
    "WAX_USED_UP, PASS",
    "STOP_DEPTH, PASS",
    "SURFACE_IGNITED, FAIL",
    "CONTAINER_BROKE, FAIL"
  })
  void onlyALifeBurntToItsEndCanPass(End end, Outcome said) {
    for (String rules : BurnRules.known()) {
      assertThat(outcome(rules, CALM, end)).as(rules).isEqualTo(said);
    }
  }

  @Test
  void aMissingNeededReadingIsNotEnoughEvidence() {
    TestSample bare =
        new TestSample(
            List.of(new Cycle(List.of(new Reading(60, Map.of("mass_g", 400.0))))), End.STOP_DEPTH);
    Verdict verdict = BurnJudge.judge(BurnRules.named("en-15493"), List.of(bare, bare, bare));
    assertThat(verdict.outcome()).isEqualTo(Outcome.NOT_ENOUGH_EVIDENCE);
    assertThat(verdict.findings()).extracting(Verdict.Finding::rule).contains("flame height");
    assertThat(verdict.findings()).allMatch(f -> f.reading() == null && !f.source().isEmpty());
  }

  /** The reading that decided is named as the maker knows it, also when a cycle was left out. */
  @Test
  void theReadingThatDecidedIsNamedByItsSampleAndItsCycle() {
    Reading high = new Reading(30, Map.of("flame_height_mm", 80.0));
    TestSample named =
        new TestSample(List.of(new TestSample.Cycle(List.of(high), 3)), End.SELF_EXTINGUISHED, "B");
    Verdict verdict = BurnJudge.judge(BurnRules.named("house"), List.of(named));
    assertThat(verdict.findings().toString()).contains("sample B, cycle 3, minute 30");
    TestSample plain =
        new TestSample(List.of(new TestSample.Cycle(List.of(high))), End.SELF_EXTINGUISHED);
    assertThat(BurnJudge.judge(BurnRules.named("house"), List.of(plain)).findings().toString())
        .contains("sample 1, cycle 1, minute 30");
  }

  @Test
  void aBrokenLimitFailsWhateverIsMissing() {
    TestSample one =
        new TestSample(
            List.of(new Cycle(List.of(new Reading(60, Map.of("flame_height_mm", 90.0))))),
            End.NOT_YET);
    Verdict verdict = BurnJudge.judge(BurnRules.named("house"), List.of(one));
    assertThat(verdict.outcome()).isEqualTo(Outcome.FAIL);
    assertThat(verdict.findings()).hasSize(1);
    assertThat(verdict.findings().get(0).reading()).isEqualTo(90.0);
    assertThat(verdict.findings().get(0).limit()).isEqualTo(75.0);
  }

  @Test
  void theHouseAsksForThreeSamples() {
    List<TestSample> two = three(CALM, End.STOP_DEPTH).subList(0, 2);
    assertThat(BurnJudge.judge(BurnRules.named("house"), two).outcome())
        .isEqualTo(Outcome.NOT_ENOUGH_EVIDENCE);
    assertThat(BurnJudge.judge(BurnRules.named("house"), List.of()).outcome())
        .isEqualTo(Outcome.NOT_ENOUGH_EVIDENCE);
  }

  @Test
  void noTestAtAllIsNotEnoughEvidenceUnderAnyRules() {
    for (String rules : BurnRules.known()) {
      assertThat(BurnJudge.judge(BurnRules.named(rules), List.of()).outcome())
          .as(rules)
          .isEqualTo(Outcome.NOT_ENOUGH_EVIDENCE);
    }
  }

  @Test
  void everyLimitNamesItsSource() {
    for (String rules : BurnRules.known()) {
      assertThat(BurnRules.named(rules).limits()).allMatch(l -> l.source().length() > 3);
    }
    assertThatThrownBy(() -> BurnRules.named("none")).isInstanceOf(OutOfRange.class);
  }

  /** Clopper and Pearson 1934: with no failure the bound is 1 − 0.05^(1/n). */
  @ParameterizedTest
  @CsvSource({"3, 3", "5, 5", "10, 10", "59, 59"})
  void whatCouldStillFailAfterNoFailureIsTheClosedForm(int passed, int tested) {
    assertThat(Evidence.couldFail(passed, tested))
        .isCloseTo(1 - Math.pow(.05, 1.0 / tested), within(1e-9));
  }

  @Test
  void threeOfThreeLeaveUpTo63PercentOpen() {
    assertThat(Evidence.sentence(3, 3)).contains("63 %");
    assertThat(Evidence.couldFail(0, 3)).isEqualTo(1);
    assertThat(Evidence.couldFail(2, 3)).isCloseTo(.8647, within(1e-4));
  }
}

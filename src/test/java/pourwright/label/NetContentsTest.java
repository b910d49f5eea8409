package pourwright.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.label.NetContents.Verdict;
import pourwright.quantity.OutOfRange;

class NetContentsTest {

  /** Handbook compliance 4.2, sets A to D, check value 38: constructed by applying HB 133. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          228.1 227.4 226.5 229.0 227.8 226.2 228.4 227.1 226.9 227.6 228.8 227.3 | 0.5917 | 0.8723 | 0.5539 | 0 | PASS
          226.0 227.5 225.2 228.1 226.4 227.9 225.8 226.6 228.4 224.9 227.2 226.8 | -0.2667 | 1.1308 | 0.7181 | 0 | PASS
          225.8 226.1 225.5 226.4 225.9 226.2 225.7 226.0 226.3 225.6 226.1 225.4 | -1.0833 | 0.3215 | 0.2041 | 0 | FAIL_AVERAGE
          228.0 229.1 227.6 228.4 213.9 229.5 228.8 227.9 230.1 228.2 229.0 228.6 | 0.425 | 4.3179 | 2.7418 | 1 | FAIL_INDIVIDUAL
          """)
  void theFourConstructedLotsHaveTheirVerdicts(
      String nets, double average, double spread, double limit, int beyond, Verdict verdict) {
    NetContents found = UnitedStatesNet.judge(new NetSample(227, 100, numbers(nets)));
    assertThat(found.averageErrorG()).isCloseTo(average, within(5e-5));
    assertThat(found.standardDeviationG()).isCloseTo(spread, within(5e-5));
    assertThat(found.errorLimitG()).isCloseTo(limit, within(5e-5));
    assertThat(found.individualAllowanceG()).isEqualTo(12.7);
    assertThat(found.beyondAllowance()).isEqualTo(beyond);
    assertThat(found.verdict()).isEqualTo(verdict);
  }

  /** NIST Handbook 133 Table 2-5, from memory; check value 39. */
  @ParameterizedTest
  @CsvSource({
    "30,3.0",
    "35.9,3.59",
    "36,3.6",
    "54,3.6",
    "54.1,5.4",
    "208,10.8",
    "208.1,12.7",
    "227,12.7",
    "263,12.7",
    "263.1,14.5",
    "340,16.3",
    "453,19.9",
    "1000,35.3",
    "6480,113"
  })
  void theAllowableShortfallFollowsTheTable(double labelG, double allowanceG) {
    assertThat(UnitedStatesNet.allowance(labelG)).isCloseTo(allowanceG, within(1e-9));
  }

  @Test
  void aWeightBeyondTheTableIsRefused() {
    assertThatThrownBy(() -> UnitedStatesNet.allowance(6481)).isInstanceOf(OutOfRange.class);
  }

  /** NIST Handbook 133 Table 2-1 against t(0.975, n−1)/√n, check value 40. */
  @ParameterizedTest
  @CsvSource({
    "2,8.985",
    "3,2.484",
    "4,1.591",
    "5,1.242",
    "6,1.049",
    "7,0.925",
    "8,0.836",
    "9,0.769",
    "10,0.715",
    "11,0.672",
    "12,0.635",
    "24,0.422",
    "48,0.291"
  })
  void thePrintedFactorsAgreeWithStudentsT(int size, double printed) {
    assertThat(UnitedStatesNet.factor(size)).isEqualTo(printed);
    assertThat(NetSample.factor(0.975, size)).isCloseTo(printed, within(0.0007));
  }

  /** Directive 76/211/EEC Annex II 2.3, check value 43. */
  @ParameterizedTest
  @CsvSource({"20,0.640", "30,0.503", "50,0.379"})
  void theEuropeanFactorsAgreeWithStudentsT(int size, double factor) {
    assertThat(NetSample.factor(0.995, size)).isCloseTo(factor, within(0.0005));
  }

  /** Directive 76/211/EEC Annex I 2.4, check value 41, percentages rounded up to 0.1 g. */
  @ParameterizedTest
  @CsvSource({
    "30,2.7",
    "50,4.5",
    "75,4.5",
    "100,4.5",
    "150,6.8",
    "200,9",
    "220,9",
    "300,9",
    "340,10.2",
    "400,12",
    "500,15",
    "750,15",
    "1000,15",
    "1500,22.5"
  })
  void theTolerableErrorFollowsTheTable(double labelG, double errorG) {
    assertThat(EuropeanNet.tolerableError(labelG)).isCloseTo(errorG, within(1e-9));
  }

  /** Check value 42: 220 g, twice 9 g below is 202 g. */
  @Test
  void aPackageBeyondTwiceTheTolerableErrorFailsTheLot() {
    List<Double> nets = new ArrayList<>(Collections.nCopies(29, 222.0));
    nets.add(202.0);
    assertThat(EuropeanNet.judge(new NetSample(220, 200, nets)).verdict()).isEqualTo(Verdict.PASS);
    nets.set(29, 201.9);
    assertThat(EuropeanNet.judge(new NetSample(220, 200, nets)).verdict())
        .isEqualTo(Verdict.FAIL_INDIVIDUAL);
    // 150 g: 4.5 % is 6.75 g, rounded up to 6.8 g; twice that below is 136.4 g
    List<Double> small = new ArrayList<>(Collections.nCopies(29, 152.0));
    small.add(136.4);
    assertThat(EuropeanNet.judge(new NetSample(150, 200, small)).verdict()).isEqualTo(Verdict.PASS);
    small.set(29, 136.3);
    assertThat(EuropeanNet.judge(new NetSample(150, 200, small)).verdict())
        .isEqualTo(Verdict.FAIL_INDIVIDUAL);
  }

  /** Directive 76/211/EEC Annex II, plan from memory: 30 accept 1 reject 3, 60 accept 4. */
  @ParameterizedTest
  @CsvSource({"30,1,PASS", "30,2,", "30,3,FAIL_INDIVIDUAL", "60,4,PASS", "60,5,FAIL_INDIVIDUAL"})
  void theDoublePlanAsksForASecondSampleInBetween(int size, int beyond, Verdict verdict) {
    List<Double> nets = new ArrayList<>(Collections.nCopies(size - beyond, 222.0));
    nets.addAll(Collections.nCopies(beyond, 210.0));
    assertThat(EuropeanNet.judge(new NetSample(220, 300, nets)).verdict()).isEqualTo(verdict);
  }

  @Test
  void aMeanBelowTheEuropeanLimitFails() {
    List<Double> nets = new ArrayList<>(Collections.nCopies(29, 219.0));
    nets.add(219.5);
    assertThat(EuropeanNet.judge(new NetSample(220, 200, nets)).verdict())
        .isEqualTo(Verdict.FAIL_AVERAGE);
  }

  /** NIST Handbook 133 Table 2-1: a smaller sample than the plan's is no pass. */
  @Test
  void tooSmallASampleIsNoPassButCanFail() {
    NetContents good = UnitedStatesNet.judge(new NetSample(227, 100, numbers("228 229 228")));
    assertThat(good.verdict()).isNull();
    assertThat(good.warnings()).singleElement().asString().contains("12 packages");
    NetContents bad = UnitedStatesNet.judge(new NetSample(227, 100, numbers("200 229 228")));
    assertThat(bad.verdict()).isEqualTo(Verdict.FAIL_INDIVIDUAL);
  }

  /** NIST Handbook 133 Table 2-1: for a lot of one only the allowance counts. */
  @Test
  void aLotOfOneIsHeldAgainstTheAllowanceAlone() {
    assertThat(UnitedStatesNet.judge(new NetSample(227, 1, List.of(214.4))).verdict())
        .isEqualTo(Verdict.PASS);
    assertThat(UnitedStatesNet.judge(new NetSample(227, 1, List.of(214.2))).verdict())
        .isEqualTo(Verdict.FAIL_INDIVIDUAL);
  }

  /** NIST Handbook 133 Table 2-1: above 3,200 packages one of 48 may lie beyond. */
  @Test
  void inAVeryLargeLotOnePackageMayLieBeyond() {
    List<Double> nets = new ArrayList<>(Collections.nCopies(47, 229.0));
    nets.add(214.0);
    assertThat(UnitedStatesNet.judge(new NetSample(227, 5000, nets)).verdict())
        .isEqualTo(Verdict.PASS);
    nets.set(0, 214.0);
    assertThat(UnitedStatesNet.judge(new NetSample(227, 5000, nets)).verdict())
        .isEqualTo(Verdict.FAIL_INDIVIDUAL);
  }

  private static List<Double> numbers(String written) {
    return Arrays.stream(written.split(" ", -1)).map(Double::valueOf).toList();
  }
}

package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pourwright.burn.NextTest.Advice;
import pourwright.burn.NextTest.Candidate;
import pourwright.burn.NextTest.Foresight;

/** Which wick to test next. */
class NextTestTest {
  private static final int[] UNKNOWN = {0, 0};

  private static Candidate wick(String name, Foresight foresight, int passed, int failed) {
    return new Candidate(name, UNKNOWN, foresight, passed, failed, 1);
  }

  /** Rule of succession (Laplace): nothing known 1/2, one pass 2/3. */
  @Test
  void withNothingKnownTheChanceIsOneHalf() {
    assertThat(wick("a", Foresight.NONE, 0, 0).chanceToPass()).isCloseTo(.5, within(1e-12));
    assertThat(wick("a", Foresight.NONE, 1, 0).chanceToPass()).isCloseTo(2.0 / 3, within(1e-12));
    assertThat(wick("a", Foresight.NONE, 0, 0).chanceToProve(3)).isCloseTo(.25, within(1e-12));
  }

  @Test
  void theWickThatTheSimulationLikesIsTestedFirst() {
    Advice advice =
        NextTest.among(
            List.of(
                wick("flat braid 4.1 g/h", Foresight.BAD, 0, 0),
                wick("flat braid 4.8 g/h", Foresight.GOOD, 0, 0),
                wick("flat braid 5.6 g/h", Foresight.NONE, 0, 0)),
            3);
    assertThat(advice.candidate().name()).isEqualTo("flat braid 4.8 g/h");
    assertThat(advice.why()).contains("A chance is no proof").doesNotContain("safe");
    assertThat(advice.expectedTests()).isGreaterThan(1);
    assertThat(advice.chance()).isBetween(.25, 1.0);
  }

  @Test
  void aFailedWickIsNotTestedAgainWhileAnotherIsOpen() {
    Advice advice =
        NextTest.among(List.of(wick("a", Foresight.GOOD, 2, 1), wick("b", Foresight.BAD, 0, 0)), 3);
    assertThat(advice.candidate().name()).isEqualTo("b");
  }

  @Test
  void aDearTestWaitsWhenChancesAreEqual() {
    Candidate dear = new Candidate("dear", UNKNOWN, Foresight.GOOD, 0, 0, 5);
    Candidate cheap = new Candidate("cheap", UNKNOWN, Foresight.GOOD, 0, 0, 1);
    assertThat(NextTest.among(List.of(dear, cheap), 3).candidate().name()).isEqualTo("cheap");
  }

  /** The advice beside a simulated workshop: mean number of tests to proof or to the end. */
  @Test
  void theExpectedNumberOfTestsIsThatOfAPlayedOutWorkshop() {
    List<Candidate> wicks =
        List.of(
            wick("a", Foresight.GOOD, 0, 0),
            wick("b", Foresight.NONE, 0, 0),
            wick("c", Foresight.BAD, 0, 0));
    Advice advice = NextTest.among(wicks, 3);
    Random random = new Random(5);
    double[][] priors = {{2, 1}, {1, 1}, {1, 2}};
    long tests = 0;
    int runs = 200_000;
    for (int run = 0; run < runs; run++) {
      boolean proved = false;
      for (int c = 0; c < priors.length && !proved; c++) {
        double p = beta(random, (int) priors[c][0], (int) priors[c][1]);
        int passes = 0;
        boolean failed = false;
        while (passes < 3 && !failed) {
          tests++;
          failed = random.nextDouble() >= p;
          passes += failed ? 0 : 1;
        }
        proved = !failed;
      }
    }
    assertThat((double) tests / runs).isCloseTo(advice.expectedTests(), within(.02));
  }

  /** Beta of whole parameters by gamma variates. */
  private static double beta(Random random, int a, int b) {
    double x = 0;
    double y = 0;
    for (int i = 0; i < a; i++) {
      x -= Math.log(1 - random.nextDouble());
    }
    for (int i = 0; i < b; i++) {
      y -= Math.log(1 - random.nextDouble());
    }
    return x / (x + y);
  }
}

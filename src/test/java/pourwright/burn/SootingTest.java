package pourwright.burn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.burn.Sooting.Outcome;
import pourwright.quantity.OutOfRange;

/** EN 15426:2018, scope read in a summary, limit from memory; handbook compliance 1.2 F10. */
class SootingTest {
  /** Check value 51. */
  @ParameterizedTest
  @CsvSource({
    "0.9, 1.0, 1.1, 1, 80, PASS",
    "0.9, 1.0, 0.9, 1, 100, PASS",
    "1.1, 1.1, 1.1, 1, 80, FAIL",
    "0.5, 0.5, 2.1, 1, 80, FAIL",
    "0.2, 0.2, 0.2, 2, 80, NOT_APPLICABLE",
    "0.2, 0.2, 0.2, 1, 100.1, NOT_APPLICABLE"
  })
  void theMeanOfThreeCandlesOfOneWickIsJudged(
      double a, double b, double c, int wicks, double acrossMm, Outcome said) {
    assertThat(Sooting.judge(List.of(a, b, c), wicks, acrossMm)).isEqualTo(said);
  }

  @Test
  void twoCandlesAreTooFew() {
    assertThatThrownBy(() -> Sooting.judge(List.of(0.5, 0.5), 1, 80))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("soot indices");
  }
}

package pourwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** English grammar: one is singular; none and several are plural. */
class CountedTest {
  @ParameterizedTest
  @CsvSource({"0, 0 casts", "1, 1 cast", "2, 2 casts", "11, 11 casts", "101, 101 casts"})
  void oneIsNeverSaidAsIfItWereMany(long count, String said) {
    assertThat(Counted.of(count, "cast", "casts")).isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource({
    "1, 1st",
    "2, 2nd",
    "3, 3rd",
    "4, 4th",
    "10, 10th",
    "11, 11th",
    "12, 12th",
    "13, 13th",
    "20, 20th",
    "21, 21st",
    "22, 22nd",
    "23, 23rd",
    "101, 101st",
    "111, 111th",
    "112, 112th"
  })
  void aPlaceInARowEndsAsItIsSpoken(long place, String said) {
    assertThat(Counted.nth(place)).isEqualTo(said);
  }
}

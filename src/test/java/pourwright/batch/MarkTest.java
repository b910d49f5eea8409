package pourwright.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.quantity.OutOfRange;

/** Marks catch a wrong character and two that changed places. */
class MarkTest {
  private static final String BODY = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  /**
   * Source: from memory, the worked example that open-source check-digit libraries carry for ISO
   * 7064 MOD 37-2 (a blood donation number); the standard's own text was not at hand.
   */
  @Test
  void theKnownExampleOfTheStandardIsMet() {
    assertThat(Mark.ofBody("G123489654321").text()).isEqualTo("G123489654321Y");
    assertThat(Mark.isValid("G123489654321Y")).isTrue();
    assertThat(Mark.isValid("G123489654321Z")).isFalse();
  }

  /**
   * Source: ISO 7064, the definition of a pure system: the sum of value times 2 to the power of the
   * place from the right is 1 modulo 37. Worked by that definition, not by the program's recursion.
   */
  @ParameterizedTest
  @CsvSource({"0", "7", "42", "101", "1042", "999999", "123456789012345678"})
  void theSumByTheDefinitionIsOne(String body) {
    String text = Mark.ofBody(body).text();
    java.math.BigInteger sum = java.math.BigInteger.ZERO;
    for (int i = 0; i < text.length(); i++) {
      int value = (BODY + "*").indexOf(text.charAt(i));
      java.math.BigInteger weight = java.math.BigInteger.TWO.pow(text.length() - 1 - i);
      sum = sum.add(weight.multiply(java.math.BigInteger.valueOf(value)));
    }
    assertThat(sum.mod(java.math.BigInteger.valueOf(37))).isEqualTo(java.math.BigInteger.ONE);
  }

  @Property
  void everySingleWrongCharacterIsCaught(@ForAll @LongRange(min = 0, max = 9_999_999) long n) {
    String text = Mark.ofNumber(n).text();
    for (int i = 0; i < text.length(); i++) {
      for (char c : BODY.toCharArray()) {
        String wrong = text.substring(0, i) + c + text.substring(i + 1);
        assertThat(Mark.isValid(wrong)).isEqualTo(c == text.charAt(i));
      }
    }
  }

  @Property
  void twoNeighboursThatChangedPlacesAreCaught(
      @ForAll @LongRange(min = 0, max = 9_999_999) long n) {
    String text = Mark.ofNumber(n).text();
    for (int i = 0; i + 1 < text.length(); i++) {
      if (text.charAt(i) != text.charAt(i + 1)) {
        String swapped =
            text.substring(0, i) + text.charAt(i + 1) + text.charAt(i) + text.substring(i + 2);
        assertThat(Mark.isValid(swapped)).isFalse();
      }
    }
  }

  @Test
  void whatAPersonTypesIsReadAsMeant() {
    String text = Mark.ofNumber(1042).text();
    assertThat(Mark.read(" 10-42 " + text.substring(4).toLowerCase(java.util.Locale.ROOT)).number())
        .isEqualTo(1042);
    assertThatThrownBy(() -> Mark.read("1043" + text.substring(4))).isInstanceOf(OutOfRange.class);
  }
}

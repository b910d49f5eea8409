package pourwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTextTest {
  private static final Locale[] LOCALES = {
    Locale.US,
    Locale.GERMANY,
    Locale.FRANCE,
    Locale.forLanguageTag("de-CH"),
    Locale.forLanguageTag("en-IN"),
    Locale.forLanguageTag("sv-SE")
  };

  /** Factors: NIST Handbook 44 (2024), Appendix C; the small unit is in the dimension's sign. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "en-US | MASS   | 18 oz        | 510291416",
        "en-US | MASS   | 1 lb 4 oz    | 566990462",
        "en-US | MASS   | 1lb4oz       | 566990462",
        "en-US | MASS   | 1 LB         | 453592370",
        "de-DE | MASS   | 1,5 kg       | 1500000000",
        "de-DE | MASS   | 1.234,5 g    | 1234500000",
        "fr-FR | MASS   | 1 234,5 g    | 1234500000",
        "de-CH | MASS   | 1'234,50 g   | 1234500000",
        "de-CH | MASS   | 1’234.50 g   | 1234500000",
        "en-US | MASS   | 1,234,567 mg | 1234567000",
        "en-IN | MASS   | 12,34,567 mg | 1234567000",
        "en-US | MASS   | .5 g         | 500000",
        "en-US | LENGTH | 2 1/2 in     | 63500000",
        "en-US | LENGTH | 2-1/2 in     | 63500000",
        "en-US | LENGTH | 2½\"         | 63500000",
        "en-US | LENGTH | 2 ½ ″        | 63500000",
        "en-US | LENGTH | 5' 3\"       | 1600200000",
        "en-US | LENGTH | 5'           | 1524000000",
        "en-US | LENGTH | 5 ft 3 1/4 in| 1606550000",
        "en-US | LENGTH | 8 cm         | 80000000",
        "en-US | TEMPERATURE | 160°F   | 344261111",
        "en-US | TEMPERATURE | 160 F   | 344261111",
        "en-US | TEMPERATURE | 71 °C   | 344150000",
        "en-US | TEMPERATURE | -40 °F  | 233150000",
        "en-US | TEMPERATURE | −40 C   | 233150000",
        "en-US | VOLUME | 3/4 cup      | 177441177",
        "en-US | VOLUME | 1/3 cup      | 78862746",
        "en-US | VOLUME | 8 fl oz      | 236588236",
        "en-US | VOLUME | 1 gal        | 3785411784",
        "en-GB | VOLUME | 1 imp pt     | 568261250",
        "en-US | VOLUME | 250 cc       | 250000000",
        "en-US | AREA   | 10 sq in     | 6451600000",
        "en-US | DENSITY| 62.4 lb/ft3  | 999552",
        "en-US | TIME   | 1 h 30 min   | 5400000",
      })
  void whatPeopleWriteIsRead(String locale, Dimension dimension, String text, long amount) {
    QuantityText quantities = QuantityText.in(Locale.forLanguageTag(locale));
    assertThat(quantities.read(text, dimension, null).amount()).isEqualTo(amount);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "de-DE | MASS   | 3.000 kg     | may mean 3,000 or 3000",
        "en-US | MASS   | 1,500 g      | may mean 1.500 or 1500",
        "en-US | MASS   | 1,5 kg       | not the decimal mark",
        "en-US | MASS   | 500          | does not say its unit",
        "en-US | VOLUME | 8 oz         | is a weight",
        "en-US | MASS   | 8 fl oz      | is a volume",
        "en-GB | VOLUME | 1 pint       | American or the imperial",
        "en-US | LENGTH | 11/2 in      | not a fraction below one",
        "en-US | LENGTH | 5'100\"      | feet and inches or thousands",
        "en-US | MASS   | 4 oz 1 lb    | large to small",
        "en-US | MASS   | 1 lb 20 oz   | large to small",
        "en-US | MASS   | 1 lb 4       | does not say its unit",
        "en-US | MASS   | -3 g         | less than nothing",
        "en-US | MASS   | 12 blops     | not a unit",
        "en-US | MASS   | g            | does not begin with a number",
        "en-US | MASS   | 1,23,4 g     | unusual way",
        "en-US | MASS   | 1.2.3 g      | unusual way",
        "en-US | MASS   | 9999999999 t | too large",
        "en-US | TEMPERATURE | -500 °F | below absolute zero",
        "en-US | LENGTH | 1/0 in       | not a fraction",
      })
  void whatCannotBeOrCanBeReadTwoWaysIsRefusedWithASentence(
      String locale, Dimension dimension, String text, String sentence) {
    QuantityText quantities = QuantityText.in(Locale.forLanguageTag(locale));
    assertThatThrownBy(() -> quantities.read(text, dimension, null))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining(sentence);
  }

  @Test
  void theValueThatWasWrittenIsShownAgainUnchanged() {
    QuantityText english = QuantityText.in(Locale.US);
    QuantityText.Read read = english.read("18 oz", Dimension.MASS, null);
    assertThat(english.write(read.amount(), read.unit())).isEqualTo("18 oz");
    assertThat(
            english.write(
                english.read("160 F", Dimension.TEMPERATURE, null).amount(), Unit.FAHRENHEIT))
        .isEqualTo("160 °F");
  }

  @Test
  void aBareNumberTakesTheUnitOfTheField() {
    QuantityText german = QuantityText.in(Locale.GERMANY);
    assertThat(german.mass("12,5", Unit.GRAM)).isEqualTo(Mass.ofGrams(12.5));
  }

  @Test
  void showingAtAScalesResolutionRoundsTheShownValueOnly() {
    QuantityText english = QuantityText.in(Locale.US);
    long third = Mass.ofGrams(100 / 3.0).micrograms();
    BigDecimal tenth = new BigDecimal("0.1");
    assertThat(english.write(third, Unit.GRAM, tenth)).isEqualTo("33.3 g");
    assertThat(english.write(3 * third, Unit.GRAM, tenth)).isEqualTo("100.0 g");
    assertThat(english.write(Mass.ofGrams(21).micrograms(), Unit.OUNCE, new BigDecimal("0.05")))
        .isEqualTo("0.75 oz");
    assertThat(english.write(Mass.ofGrams(23).micrograms(), Unit.GRAM, new BigDecimal("5")))
        .isEqualTo("25 g");
  }

  @Property(tries = 300)
  void whatIsShownReadsBackToTheSameAmountInEveryUnitAndLocale(
      @ForAll @LongRange(min = 0, max = 1_000_000_000_000L) long amount) {
    for (Locale locale : LOCALES) {
      readsBackInEveryUnit(amount, locale);
    }
  }

  @Tag("long")
  @Test
  void aMillionAmountsReadBackInEveryUnitTheLocalesTakingTurns() {
    SplittableRandom random = new SplittableRandom(15);
    for (int i = 0; i < 1_000_000; i++) {
      long amount = random.nextLong(1L << random.nextInt(1, 50));
      readsBackInEveryUnit(amount, LOCALES[i % LOCALES.length]);
    }
  }

  /** The amount is the same whole number after any unit, so it is after any pair of them. */
  private static void readsBackInEveryUnit(long amount, Locale locale) {
    QuantityText quantities = QuantityText.in(locale);
    for (Unit unit : Unit.values()) {
      String written = quantities.write(amount, unit);
      QuantityText.Read read = quantities.read(written, unit.dimension(), null);
      if (read.amount() != amount || read.unit() != unit) {
        throw new AssertionError(locale + ": " + amount + " as " + written + " gave " + read);
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "de-DE | 12,50 €     | EUR | 1250",
        "en-US | €12.50      | EUR | 1250",
        "de-CH | 1'234.50 CHF| CHF | 123450",
        "en-US | $5          | USD | 500",
        "sv-SE | 100 kr      | USD | 10000",
        "en-US | 500 JPY     | JPY | 500",
        "en-US | -3.10       | USD | -310",
      })
  void pricesAreRead(String locale, String text, String currency, long minor) {
    assertThat(MoneyText.in(Locale.forLanguageTag(locale)).read(text, "USD"))
        .isEqualTo(new Money(minor, currency));
  }

  @Test
  void aPriceWithTooManyDecimalsOrNoCurrencyIsRefused() {
    MoneyText prices = MoneyText.in(Locale.US);
    assertThatThrownBy(() -> prices.read("1.005 EUR", null)).hasMessageContaining("cannot be paid");
    assertThatThrownBy(() -> prices.read("$5", null)).hasMessageContaining("which currency");
    assertThatThrownBy(() -> prices.read("5 XQZ", null)).hasMessageContaining("not a currency");
    assertThatThrownBy(() -> new Money(1, "EUR").plus(new Money(1, "USD")))
        .isInstanceOf(OutOfRange.class);
  }
}

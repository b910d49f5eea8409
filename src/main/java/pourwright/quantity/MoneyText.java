package pourwright.quantity;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Prices as people write them: {@code 12,50 €}, {@code €12.50}, {@code 1'234.50 CHF}. */
public final class MoneyText {
  private static final Map<String, String> SIGNS =
      Map.of("€", "EUR", "£", "GBP", "¥", "JPY", "₹", "INR", "US$", "USD", "Fr.", "CHF");

  private final NumberText numbers;

  private MoneyText(Locale locale) {
    this.numbers = new NumberText(locale);
  }

  /** The prices of one locale. */
  public static MoneyText in(Locale locale) {
    return new MoneyText(locale);
  }

  /**
   * Reads a price.
   *
   * @param unsaid currency of a bare number, and of {@code $} and {@code kr}; null where it must be
   *     written
   * @throws OutOfRange with a sentence when the text is no price or the currency is not clear
   */
  public Money read(String text, @Nullable String unsaid) {
    String stripped = text.strip();
    String number = stripped.replaceAll("^[^0-9.,−-]+|[^0-9.,]+$", "");
    if (number.isEmpty()) {
      throw refuse("'" + stripped + "' has no number", "write a price such as 12.50 EUR");
    }
    int at = stripped.indexOf(number);
    String before = stripped.substring(0, at).strip();
    String after = stripped.substring(at + number.length()).strip();
    if (!before.isEmpty() && !after.isEmpty()) {
      throw refuse("'" + stripped + "' names the currency twice", "name it once");
    }
    String currency = currency(before + after, stripped, unsaid);
    return Money.of(numbers.decimal(number), currency);
  }

  private static String currency(String word, String text, @Nullable String unsaid) {
    String known = SIGNS.get(word);
    if (known != null) {
      return known;
    }
    if (word.matches("[A-Za-z]{3}")) {
      return word.toUpperCase(Locale.ROOT);
    }
    if (unsaid != null && (word.isEmpty() || word.equals("$") || word.equals("kr"))) {
      return unsaid;
    }
    throw refuse(
        "'" + text + "' does not say clearly which currency", "write its letters, as in 12.50 EUR");
  }

  /** A price with its currency's letters, which reads back to the same amount. */
  public String write(Money money) {
    return numbers.write(money.amount()) + " " + money.currency();
  }

  private static OutOfRange refuse(String sentence, String hint) {
    return new OutOfRange("price", sentence, hint);
  }
}

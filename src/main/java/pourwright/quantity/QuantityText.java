package pourwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Amounts with units as people write them: {@code 18 oz}, {@code 1 lb 4 oz}, {@code 2 1/2 in},
 * {@code 2½"}, {@code 1,5 kg} where a comma is the decimal mark, {@code 160°F}, {@code 3/4 cup}.
 * Whatever is written is kept exactly to the small unit of its dimension; what is shown can be read
 * back to the same amount. What can be read two ways is refused with a sentence.
 */
public final class QuantityText {
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile("(\\d+) *['′’] *(?:(\\d[^'′’\"″”]*?) *(?:\"|″|”|''|in))?");
  private static final List<String> LIQUID =
      List.of(
          "fl oz",
          "fl. oz.",
          "fluid ounces",
          "cup",
          "cups",
          "pt",
          "pint",
          "pints",
          "qt",
          "quart",
          "quarts",
          "gal",
          "gallon",
          "gallons");
  private static final List<Word> WORDS = words();

  private final NumberText numbers;
  private final boolean imperialIsUsual;

  private QuantityText(Locale locale) {
    this.numbers = new NumberText(locale);
    this.imperialIsUsual = List.of("GB", "IE", "AU", "NZ").contains(locale.getCountry());
  }

  /** The amounts of one locale. */
  public static QuantityText in(Locale locale) {
    return new QuantityText(locale);
  }

  /** An amount and the unit it was last written in, which is the one to show it in. */
  public record Read(long amount, Unit unit) {}

  private record Word(String symbol, @Nullable Unit unit) {}

  /**
   * Reads an amount.
   *
   * @param text as written
   * @param dimension what is asked for
   * @param unsaid unit of a bare number; null where the unit must be written
   * @throws OutOfRange with a sentence when the text is not such an amount or can be read two ways
   */
  public Read read(String text, Dimension dimension, @Nullable Unit unsaid) {
    String rest = text.strip();
    if (rest.isEmpty()) {
      throw refuse(
          "nothing is written", "write " + dimension.words() + ", as in " + dimension.example());
    }
    boolean negative = rest.startsWith("-") || rest.startsWith("−");
    if (negative && dimension != Dimension.TEMPERATURE) {
      throw refuse("'" + text.strip() + "' is less than nothing", "write it without the minus");
    }
    rest = negative ? rest.substring(1).strip() : rest;
    Matcher feet = FEET_AND_INCHES.matcher(rest);
    if (dimension == Dimension.LENGTH && feet.matches()) {
      return feetAndInches(rest, feet);
    }
    return parts(rest, dimension, unsaid, negative);
  }

  private Read feetAndInches(String text, Matcher feet) {
    String inches = feet.group(2);
    if (inches == null) {
      return new Read(Unit.FOOT.amountOf(new BigDecimal(feet.group(1))), Unit.FOOT);
    }
    if (inches.matches("\\d{3}")) {
      throw refuse("'" + text + "' may mean feet and inches or thousands", "write ft and in");
    }
    return parts(feet.group(1) + " ft " + inches + " in", Dimension.LENGTH, null, false);
  }

  private Read parts(String text, Dimension dimension, @Nullable Unit unsaid, boolean negative) {
    String rest = text;
    long sum = 0;
    Unit last = null;
    long room = Long.MAX_VALUE;
    while (!rest.isEmpty()) {
      int end = endOfNumber(rest);
      NumberText.Fraction number = numbers.unsigned(rest.substring(0, end));
      rest = rest.substring(end).strip();
      Unit unit = unsaid;
      if (rest.isEmpty()) {
        unit = unitOfBareNumber(text, dimension, last == null ? unsaid : null);
      } else {
        Word word = wordAt(rest, dimension);
        rest = rest.substring(word.symbol.length()).strip();
        unit = word.unit;
      }
      if (unit == null || unit.dimension() != dimension) {
        throw wrongUnit(text, dimension, unit);
      }
      long amount =
          unit.amountOf(negative ? number.negated().over() : number.over(), number.under());
      if (last != null && (amount >= room || dimension == Dimension.TEMPERATURE)) {
        throw refuse(
            "the parts of '" + text + "' do not go from large to small",
            "write them as in " + dimension.example());
      }
      sum = Math.addExact(sum, amount);
      room = unit.amountOf(BigDecimal.ONE);
      last = unit;
    }
    if (last == null) {
      throw refuse("'" + text + "' has no number", "write it as in " + dimension.example());
    }
    if (dimension == Dimension.TEMPERATURE && sum < 0) {
      throw refuse("'" + text + "' is below absolute zero", "check the sign and °C or °F");
    }
    return new Read(sum, last);
  }

  private static Unit unitOfBareNumber(String text, Dimension dimension, @Nullable Unit unsaid) {
    if (unsaid == null) {
      throw refuse("'" + text + "' does not say its unit", "write it as in " + dimension.example());
    }
    return unsaid;
  }

  private static int endOfNumber(String text) {
    int end = 0;
    while (end < text.length() && NumberText.mayContain(text.charAt(end))) {
      end++;
    }
    if (end == 0) {
      throw refuse("'" + text + "' does not begin with a number", "write the number first");
    }
    return end;
  }

  /** All symbols, longest first. */
  private static List<Word> words() {
    List<Word> words = new ArrayList<>();
    for (Unit unit : Unit.values()) {
      unit.symbols().forEach(symbol -> words.add(new Word(symbol, unit)));
    }
    LIQUID.forEach(symbol -> words.add(new Word(symbol, null)));
    words.sort(Comparator.comparingInt((Word w) -> w.symbol.length()).reversed());
    return List.copyOf(words);
  }

  /** The longest symbol at the start of the text that ends where a word ends. */
  private Word wordAt(String text, Dimension dimension) {
    for (Word exact : WORDS) {
      if (startsWithWord(text, exact.symbol, false)) {
        return new Word(exact.symbol, unitOf(exact, text));
      }
    }
    for (Word loose : WORDS) {
      if (loose.symbol.length() > 1 && startsWithWord(text, loose.symbol, true)) {
        return new Word(loose.symbol, unitOf(loose, text));
      }
    }
    throw refuse(
        "'" + text + "' is not a unit that is known here",
        "write " + dimension.words() + ", as in " + dimension.example());
  }

  private static boolean startsWithWord(String text, String symbol, boolean ignoreCase) {
    if (!text.regionMatches(ignoreCase, 0, symbol, 0, symbol.length())) {
      return false;
    }
    if (text.length() == symbol.length()) {
      return true;
    }
    char next = text.charAt(symbol.length());
    char last = symbol.charAt(symbol.length() - 1);
    boolean digitsRun = Character.isDigit(next) && Character.isDigit(last);
    return !Character.isLetter(next) && next != '/' && !digitsRun && "²³".indexOf(next) < 0;
  }

  /** Pints, gallons and their like are American or imperial; where both are usual, say which. */
  private @Nullable Unit unitOf(Word word, String text) {
    if (word.unit != null) {
      return word.unit;
    }
    String measure = word.symbol.equals("fl. oz.") ? "fl oz" : word.symbol;
    if (imperialIsUsual) {
      throw refuse(
          "'" + text + "' may be the American or the imperial measure",
          "write US " + measure + " or imp " + measure + ", or use ml");
    }
    String american = "US " + measure;
    for (Unit unit : Unit.values()) {
      if (unit.symbols().contains(american)) {
        return unit;
      }
    }
    return null;
  }

  private static OutOfRange wrongUnit(String text, Dimension dimension, @Nullable Unit unit) {
    if (unit == Unit.OUNCE && dimension == Dimension.VOLUME) {
      return refuse("'" + text + "' is a weight, and a volume is asked for", "write fl oz or ml");
    }
    String is = unit == null ? "not clear" : unit.dimension().words();
    return refuse(
        "'" + text + "' is " + is + ", and " + dimension.words() + " is asked for",
        "write it as in " + dimension.example());
  }

  /** The amount in a unit, with the fewest decimals that read back to the same amount. */
  public String write(long amount, Unit unit) {
    return joined(numbers.write(unit.shortestValueOf(amount)), unit);
  }

  /**
   * The amount in a unit as a scale shows it; for show, never to be added up.
   *
   * @param resolution smallest step of the display, greater than zero, in the unit
   */
  public String write(long amount, Unit unit, BigDecimal resolution) {
    BigDecimal value = unit.valueOf(amount, 12);
    BigDecimal steps = value.divide(resolution, 0, RoundingMode.HALF_EVEN);
    BigDecimal shown =
        steps
            .multiply(resolution)
            .setScale(Math.max(0, resolution.scale()), RoundingMode.HALF_EVEN);
    return joined(numbers.write(shown), unit);
  }

  private static String joined(String number, Unit unit) {
    return number + " " + unit.symbol();
  }

  /** Reads a mass. */
  public Mass mass(String text, @Nullable Unit unsaid) {
    return new Mass(read(text, Dimension.MASS, unsaid).amount());
  }

  /** Reads a volume. */
  public Volume volume(String text, @Nullable Unit unsaid) {
    return new Volume(read(text, Dimension.VOLUME, unsaid).amount());
  }

  /** Reads a length. */
  public Length length(String text, @Nullable Unit unsaid) {
    return new Length(read(text, Dimension.LENGTH, unsaid).amount());
  }

  /** Reads a temperature. */
  public Temperature temperature(String text, @Nullable Unit unsaid) {
    return new Temperature(read(text, Dimension.TEMPERATURE, unsaid).amount());
  }

  /** Reads a density. */
  public Density density(String text, @Nullable Unit unsaid) {
    return new Density(read(text, Dimension.DENSITY, unsaid).amount());
  }

  private static OutOfRange refuse(String sentence, String hint) {
    return new OutOfRange("amount", sentence, hint);
  }
}

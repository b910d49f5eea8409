package pourwright.quantity;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers as people write them: {@code 1234.5}, {@code 1 234,5}, {@code 1'234,50}, {@code 2 1/2},
 * {@code 2½}. The decimal mark is that of the locale. What can be read two ways is refused: {@code
 * 3.000} where a point groups thousands may mean 3 or 3000.
 */
public final class NumberText {
  private static final Map<Character, int[]> VULGAR =
      Map.ofEntries(
          Map.entry('½', new int[] {1, 2}),
          Map.entry('¼', new int[] {1, 4}),
          Map.entry('¾', new int[] {3, 4}),
          Map.entry('⅓', new int[] {1, 3}),
          Map.entry('⅔', new int[] {2, 3}),
          Map.entry('⅛', new int[] {1, 8}),
          Map.entry('⅜', new int[] {3, 8}),
          Map.entry('⅝', new int[] {5, 8}),
          Map.entry('⅞', new int[] {7, 8}),
          Map.entry('⅕', new int[] {1, 5}),
          Map.entry('⅖', new int[] {2, 5}),
          Map.entry('⅗', new int[] {3, 5}),
          Map.entry('⅘', new int[] {4, 5}),
          Map.entry('⅙', new int[] {1, 6}),
          Map.entry('⅚', new int[] {5, 6}));
  private static final String VULGARS = "½¼¾⅓⅔⅛⅜⅝⅞⅕⅖⅗⅘⅙⅚";
  private static final String SPACES = " \u00a0\u2009\u202f\u2007\u2008";
  private static final Pattern MIXED =
      Pattern.compile("(?:(\\d{1,9})(?: +| *- *))?(\\d{1,6}) *[/⁄] *(\\d{1,6})");
  private static final Pattern WITH_VULGAR = Pattern.compile("(\\d{0,9})[ -]*([" + VULGARS + "])");
  private static final Pattern THREES = Pattern.compile("\\d{1,3}(?:g\\d{3})+");
  private static final Pattern LAKHS = Pattern.compile("\\d{1,2}(?:g\\d{2})*g\\d{3}");

  private final char decimal;
  private final boolean lakhs;

  NumberText(Locale locale) {
    this.decimal = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
    this.lakhs = "IN PK BD NP LK".contains(locale.getCountry()) && !locale.getCountry().isEmpty();
  }

  /** A number read exactly, as a fraction of two decimals. */
  record Fraction(BigDecimal over, BigDecimal under) {
    static Fraction of(BigDecimal value) {
      return new Fraction(value, BigDecimal.ONE);
    }

    Fraction negated() {
      return new Fraction(over.negate(), under);
    }
  }

  /** The numbers of one locale. */
  public static NumberText in(Locale locale) {
    return new NumberText(locale);
  }

  /** True for characters that a number may contain. */
  static boolean mayContain(char c) {
    return (c >= '0' && c <= '9')
        || ".,'’/⁄-".indexOf(c) >= 0
        || SPACES.indexOf(c) >= 0
        || VULGARS.indexOf(c) >= 0;
  }

  /**
   * Reads a plain decimal number, not a fraction.
   *
   * @throws OutOfRange when it is no number or can be read two ways
   */
  public BigDecimal decimal(String text) {
    String stripped = plainSpaces(text);
    boolean negative = stripped.startsWith("-") || stripped.startsWith("−");
    BigDecimal value = marked(negative ? stripped.substring(1).strip() : stripped);
    return negative ? value.negate() : value;
  }

  /** Writes a number with the locale's decimal mark and no grouping. */
  public String write(BigDecimal value) {
    return value.toPlainString().replace('.', decimal);
  }

  Fraction unsigned(String text) {
    String number = plainSpaces(text);
    Matcher vulgar = WITH_VULGAR.matcher(number);
    if (vulgar.matches()) {
      int[] parts = VULGAR.getOrDefault(vulgar.group(2).charAt(0), new int[] {0, 1});
      return mixed(vulgar.group(1), parts[0], parts[1]);
    }
    Matcher mixed = MIXED.matcher(number);
    if (mixed.matches()) {
      int over = Integer.parseInt(mixed.group(2));
      int under = Integer.parseInt(mixed.group(3));
      if (under == 0 || over >= under) {
        throw refuse(
            "'" + number + "' is not a fraction below one",
            under != 0 && number.indexOf(' ') < 0
                ? "put a space between the whole and the fraction, as in 1 1/2"
                : "write it as in 2 1/2");
      }
      String whole = mixed.group(1);
      return mixed(whole == null ? "" : whole, over, under);
    }
    return Fraction.of(marked(number));
  }

  private static Fraction mixed(String whole, int over, int under) {
    long wholes = whole.isEmpty() ? 0 : Long.parseLong(whole);
    return new Fraction(BigDecimal.valueOf(wholes * under + over), BigDecimal.valueOf(under));
  }

  private static String plainSpaces(String text) {
    String plain = text;
    for (char space : SPACES.toCharArray()) {
      plain = plain.replace(space, ' ');
    }
    return plain.strip();
  }

  private BigDecimal marked(String number) {
    if (!number.matches("[0-9.,'’ ]*[0-9][0-9.,'’ ]*")) {
      throw refuse("'" + number + "' is not a number", "write a number such as 12" + decimal + "5");
    }
    int mark = decimalMark(number);
    String whole = mark < 0 ? number : number.substring(0, mark);
    String part = mark < 0 ? "" : number.substring(mark + 1);
    if (!part.matches("\\d*") || !isWellGrouped(whole)) {
      throw refuse(
          "the digits of '" + number + "' are grouped in an unusual way",
          "write it without grouping, as in 1234" + decimal + "5");
    }
    String digits = whole.replaceAll("\\D", "");
    return new BigDecimal((digits.isEmpty() ? "0" : digits) + (part.isEmpty() ? "" : "." + part));
  }

  /** Place of the decimal mark, or −1; refuses where two readings are possible. */
  private int decimalMark(String number) {
    int point = number.lastIndexOf('.');
    int comma = number.lastIndexOf(',');
    if (point < 0 && comma < 0) {
      return -1;
    }
    if (point >= 0 && comma >= 0) {
      return Math.max(point, comma);
    }
    int last = Math.max(point, comma);
    char mark = number.charAt(last);
    if (number.indexOf(mark) != last) {
      return -1;
    }
    if (mark == decimal) {
      return last;
    }
    if (number.matches(".*\\d['’ ]\\d.*")) {
      return last;
    }
    throw oneForeignMark(number, last);
  }

  private OutOfRange oneForeignMark(String number, int at) {
    String whole = number.substring(0, at);
    String part = number.substring(at + 1);
    if (whole.matches("[1-9]\\d{0,2}") && part.matches("\\d{3}")) {
      return refuse(
          "'" + number + "' may mean " + whole + decimal + part + " or " + whole + part,
          "write " + whole + decimal + part + " or " + whole + part);
    }
    return refuse(
        "'" + number + "' has a mark that is not the decimal mark here",
        "write " + whole + decimal + part);
  }

  private boolean isWellGrouped(String whole) {
    if (whole.matches("\\d*")) {
      return true;
    }
    String marks = whole.replaceAll("\\d", "").replace('’', '\'');
    if (marks.chars().distinct().count() != 1) {
      return false;
    }
    String grouped = whole.replaceAll("\\D", "g");
    return THREES.matcher(grouped).matches() || (lakhs && LAKHS.matcher(grouped).matches());
  }

  private static OutOfRange refuse(String sentence, String hint) {
    return new OutOfRange("amount", sentence, hint);
  }
}

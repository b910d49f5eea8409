package pourwright.order;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Whole numbers of pieces as shops write them. {@code 3.000} is three or three thousand: unless the
 * column itself shows which mark is the decimal one, a person has to say.
 */
final class Quantities {
  private static final Pattern PLAIN = Pattern.compile("\\+?\\d{1,9}");
  private static final Pattern GROUPED =
      Pattern.compile("\\d{1,3}(?:(['\u2019 ]))\\d{3}(?:\\1\\d{3})*");
  private static final Pattern ONE_MARK = Pattern.compile("\\d{1,9}([.,])(\\d{1,9})");
  private static final Pattern GROUPS_AND_MARK =
      Pattern.compile("\\d{1,3}(?:([.,' \u2019])\\d{3})+(?:([.,])(\\d{1,2}))?");

  private Quantities() {}

  /** What one text says about the mark: the mark itself, 0 for nothing, ? for either. */
  private static char evidence(String text) {
    var one = ONE_MARK.matcher(text);
    if (one.matches()) {
      boolean grouping = one.group(2).length() == 3 && one.start(1) <= 3 && !text.startsWith("0");
      return grouping ? '?' : one.group(1).charAt(0);
    }
    var both = GROUPS_AND_MARK.matcher(text);
    if (both.matches()) {
      String mark = both.group(2);
      char group = both.group(1).charAt(0);
      if (mark != null && mark.charAt(0) != group) {
        return mark.charAt(0);
      }
      return group == '.' ? ',' : group == ',' ? '.' : 0;
    }
    return 0;
  }

  /**
   * The decimal mark of a column: as chosen, as shown by a value, or 0 where none is needed.
   *
   * @throws Stop when a value can be read in two ways
   */
  static char mark(List<String> texts, @Nullable Character chosen) throws Stop {
    if (chosen != null) {
      return chosen;
    }
    boolean point = false;
    boolean comma = false;
    String unclear = "";
    for (String raw : texts) {
      String text = normal(raw);
      char says = evidence(text);
      point |= says == '.';
      comma |= says == ',';
      unclear = says == '?' && unclear.isEmpty() ? text : unclear;
    }
    if ((point && comma) || (!unclear.isEmpty() && !point && !comma)) {
      String sentence =
          point && comma
              ? "the quantities use both the point and the comma as the decimal mark"
              : "a quantity of " + unclear + " can be read in two ways";
      throw Stop.ambiguous(new OrderImport.Question("decimal", sentence, List.of(".", ",")));
    }
    return point ? '.' : comma ? ',' : 0;
  }

  private static String normal(String raw) {
    String text = Normalizer.normalize(Blanks.strip(raw), Normalizer.Form.NFKC);
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(c -> out.appendCodePoint(Blanks.isBlank(c) ? ' ' : c));
    return out.toString();
  }

  /** The number of pieces. */
  static int read(Cell cell, char mark) throws Unfit {
    if (cell instanceof Cell.Broken broken) {
      throw new Unfit("quantity: " + broken.reason());
    }
    if (cell instanceof Cell.Day) {
      throw new Unfit("the quantity is a date");
    }
    String shown = cell.shown();
    if (shown.isEmpty()) {
      throw new Unfit("there is no quantity");
    }
    BigDecimal number =
        cell instanceof Cell.Number n ? n.number() : new BigDecimal(plain(normal(shown), mark));
    if (number.stripTrailingZeros().scale() > 0) {
      throw new Unfit("the quantity '" + shown + "' is not a whole number of pieces");
    }
    if (number.signum() <= 0) {
      throw new Unfit("the quantity is " + shown + "; leave the line out or give 1 or more");
    }
    if (number.compareTo(BigDecimal.valueOf(OrderLine.QUANTITY_MAX)) > 0) {
      throw new Unfit(
          "the quantity '" + shown + "' is above " + OrderLine.QUANTITY_MAX + " pieces");
    }
    return number.intValueExact();
  }

  private static String plain(String text, char mark) throws Unfit {
    String unsigned = text.startsWith("-") ? text.substring(1) : text;
    String sign = text.startsWith("-") ? "-" : "";
    if (PLAIN.matcher(unsigned).matches()) {
      return sign + unsigned.replace("+", "");
    }
    if (GROUPED.matcher(unsigned).matches()) {
      return sign + unsigned.replaceAll("['\u2019 ]", "");
    }
    boolean grouped = GROUPS_AND_MARK.matcher(unsigned).matches();
    if (mark != 0 && (ONE_MARK.matcher(unsigned).matches() || grouped)) {
      String cleaned = unsigned.replaceAll("['\u2019 ]", "");
      String other = mark == '.' ? "," : ".";
      int at = cleaned.indexOf(mark);
      boolean groupsFit = at < 0 ? grouped : grouped || !cleaned.contains(other);
      boolean markOnce = at == cleaned.lastIndexOf(mark);
      if (groupsFit && markOnce && (at < 0 || cleaned.indexOf(other, at) < 0)) {
        return sign + cleaned.replace(other, "").replace(mark, '.');
      }
    }
    throw new Unfit("the quantity '" + text + "' is not a number");
  }
}

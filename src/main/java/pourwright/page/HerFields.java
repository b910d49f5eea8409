package pourwright.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.QuantityText;
import pourwright.quantity.Unit;

/**
 * Fields that a page asks in a metric unit, shown and read in hers. A field that is shown so brings
 * along what it showed and what that was, so that a figure she leaves alone comes back exactly, and
 * one that she typed is shown again as she typed it.
 */
final class HerFields {
  /** Before the name of a field: the hidden one that tells how it was shown. */
  static final String SHOWN_AS = "shown-as.";

  private static final String BETWEEN = "|";
  private static final int DECIMALS = 3;
  private static final int EXACT_DECIMALS = 6;
  private static final Map<String, Unit> METRIC =
      Map.of(
          "g", Unit.GRAM,
          "kg", Unit.KILOGRAM,
          "mm", Unit.MILLIMETRE,
          "\u00b0C", Unit.CELSIUS);
  private static final Pattern FIELD =
      Pattern.compile(
          "(<input [^>]*?name=\"([^\"]+)\"[^>]*?value=\")([^\"]*)(\"[^>]*>) <span class=\"unit\""
              + "(?: data-shown=\"([^\"]*)\")?>(kg|g|mm|\u00b0C)</span>");
  private static final Pattern LIMIT =
      Pattern.compile("\\b(from|to|than|least|most) (-?\\d+(?:[.,]\\d+)?)(?= to \\d|[.,]?$|[.,] )");

  private final Units units;

  HerFields(Units units) {
    this.units = units;
  }

  /** Her unit instead of a metric one; nothing when she takes the metric one. */
  private Optional<Unit> hers(String metric) {
    return switch (metric) {
      case "mm" -> Optional.of(units.lengthUnit()).filter(u -> u == Unit.INCH);
      case "\u00b0C" -> Optional.of(units.temperatureUnit()).filter(u -> u == Unit.FAHRENHEIT);
      case "kg" -> Optional.of(Unit.POUND).filter(u -> units.massUnit() == Unit.OUNCE);
      default -> Optional.of(units.massUnit()).filter(u -> u == Unit.OUNCE);
    };
  }

  /** A finished page whose fields are in her units. */
  String shown(String html) {
    Matcher field = FIELD.matcher(html);
    StringBuilder out = new StringBuilder(html.length() + html.length() / 16);
    while (field.find()) {
      String metric = field.group(6);
      Optional<Unit> hers = hers(metric);
      if (hers.isPresent()) {
        field.appendReplacement(out, Matcher.quoteReplacement(field(field, metric, hers.get())));
      }
    }
    return field.appendTail(out).toString();
  }

  private String field(Matcher field, String metric, Unit hers) {
    String before = field.group(5);
    String value =
        before == null ? converted(field.group(3), metric, hers, DECIMALS) : field.group(3);
    String shownAs = before == null ? metric + BETWEEN + value + BETWEEN + field.group(3) : before;
    return field.group(1)
        + value
        + field.group(4)
        + " <span class=\"unit\">"
        + hers.symbol()
        + "</span><input type=\"hidden\" name=\""
        + SHOWN_AS
        + field.group(2)
        + "\" value=\""
        + shownAs
        + "\">";
  }

  /** A metric figure in her unit; what is no plain figure stays as it is. */
  private String converted(String figure, String metric, Unit hers, int decimals) {
    if (!figure.matches("-?\\d+([.,]\\d+)?")) {
      return figure;
    }
    QuantityText texts = QuantityText.in(units.locale());
    double value = Double.parseDouble(figure.replace(',', '.'));
    double there =
        switch (metric) {
          case "mm" -> value / texts.length("1", hers).millimetres();
          case "\u00b0C" -> units.celsiusInHers(value);
          case "kg" -> value * 1000 / texts.mass("1", hers).grams();
          default -> value / texts.mass("1", hers).grams();
        };
    return plain(there, decimals);
  }

  private String plain(double value, int decimals) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
    char mark = DecimalFormatSymbols.getInstance(units.locale()).getDecimalSeparator();
    String text = (rounded.signum() == 0 ? BigDecimal.ZERO : rounded).toPlainString();
    return text.replace('.', mark);
  }

  /**
   * What she typed, as the metric figure that the page asks for.
   *
   * @param shownAs what came along with the field
   */
  String metric(String typed, String shownAs) {
    String[] parts = shownAs.split("\\|", -1);
    if (parts.length != 3 || !METRIC.containsKey(parts[0]) || typed.isBlank()) {
      return typed;
    }
    if (typed.equals(parts[1])) {
      return parts[2];
    }
    Unit hers = hers(parts[0]).orElse(METRIC.get(parts[0]));
    QuantityText texts = QuantityText.in(units.locale());
    try {
      double value =
          switch (parts[0]) {
            case "mm" -> texts.length(typed, hers).millimetres();
            case "\u00b0C" -> texts.temperature(typed, hers).celsius();
            case "kg" -> texts.mass(typed, hers).grams() / 1000;
            default -> texts.mass(typed, hers).grams();
          };
      return plain(value, EXACT_DECIMALS);
    } catch (OutOfRange e) {
      return typed;
    }
  }

  /** A complaint whose bounds are in the unit of the field it stands beside. */
  String complaint(String sentence, String shownAs) {
    String metric = shownAs.replaceFirst("\\|.*", "");
    Optional<Unit> hers = METRIC.containsKey(metric) ? hers(metric) : Optional.empty();
    if (hers.isEmpty()) {
      return sentence;
    }
    return LIMIT
        .matcher(sentence)
        .replaceAll(m -> m.group(1) + " " + converted(m.group(2), metric, hers.get(), 2));
  }
}

package pourwright.page;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pourwright.quantity.Mass;
import pourwright.quantity.QuantityText;
import pourwright.quantity.Unit;

/**
 * The units she chose in the settings: those in which amounts are shown, and the ones a number has
 * that is typed without a unit. Whatever she types with a unit is taken in that unit.
 *
 * @param massUnit gram or ounce
 * @param lengthUnit millimetre or inch
 * @param temperatureUnit degree Celsius or Fahrenheit
 * @param locale how numbers are read
 */
public record Units(Unit massUnit, Unit lengthUnit, Unit temperatureUnit, Locale locale) {
  private static final double GRAMS_IN_OUNCE = 28.349523125;
  private static final double GRAMS_IN_POUND = 453.59237;
  private static final double MM_IN_INCH = 25.4;

  /** A number, or two with 'to' between, and a unit after it that stands for itself. */
  private static final Pattern AMOUNT =
      Pattern.compile(
          "(?<![\\d.,\\u00a0\\u202f\\w-])(-?\\d[\\d.,]*)(?: (to|and) (-?\\d[\\d.,]*))?"
              + "[ \\u00a0](\u00b0C|kg|g|mm)(?![\\w/\u00b7\u00b2\u00b3])");

  private static final Pattern TAG = Pattern.compile("<(/?)([a-zA-Z][a-zA-Z0-9]*)[^>]*>");
  private static final Set<String> LEFT_ALONE =
      Set.of("svg", "script", "style", "textarea", "option", "title", "pre", "code", "button");

  /** The units of these settings. */
  public static Units of(Map<String, String> settings, Locale locale) {
    return new Units(
        settings.getOrDefault("units.mass", "g").equals("oz") ? Unit.OUNCE : Unit.GRAM,
        settings.getOrDefault("units.length", "mm").equals("in") ? Unit.INCH : Unit.MILLIMETRE,
        settings.getOrDefault("units.temperature", "c").equals("f")
            ? Unit.FAHRENHEIT
            : Unit.CELSIUS,
        locale);
  }

  /** Grams, millimetres, degrees Celsius. */
  public boolean metric() {
    return massUnit == Unit.GRAM && lengthUnit == Unit.MILLIMETRE && celsius();
  }

  private boolean celsius() {
    return temperatureUnit == Unit.CELSIUS;
  }

  /** Her unit of mass, such as {@code g}. */
  public String mass() {
    return massUnit == Unit.OUNCE ? "oz" : "g";
  }

  /** Her unit of temperature, such as {@code \u00b0C}. */
  public String temperature() {
    return celsius() ? "\u00b0C" : "\u00b0F";
  }

  /** A mass as typed, in grams. */
  public double grams(String text) {
    return readMass(text).grams();
  }

  /** A mass as typed, exact. */
  public Mass readMass(String text) {
    return QuantityText.in(locale).mass(text, massUnit);
  }

  /** A temperature as typed, in degrees Celsius. */
  public double celsius(String text) {
    return QuantityText.in(locale).temperature(text, temperatureUnit).celsius();
  }

  /** A mass in her unit: tenths of a gram or hundredths of an ounce, as scales show it. */
  public String massFigure(double grams) {
    return massUnit == Unit.OUNCE
        ? plain(grams / GRAMS_IN_OUNCE, 2)
        : String.format(Locale.ROOT, "%.1f", grams);
  }

  /** A temperature in her unit, to so many decimals. */
  public String temperatureFigure(double celsius, int decimals) {
    return plain(celsius() ? celsius : fahrenheit(celsius), decimals);
  }

  /** A temperature in her unit, as a number. */
  public double celsiusInHers(double celsius) {
    return celsius() ? celsius : fahrenheit(celsius);
  }

  /** A temperature in her unit with its unit. */
  public String temperature(double celsius, int decimals) {
    return temperatureFigure(celsius, decimals) + " " + temperature();
  }

  /**
   * NIST Handbook 44 (2024), Appendix C, and SP 811, B.8: t in \u00b0F is 1.8 t in \u00b0C + 32.
   */
  private static double fahrenheit(double celsius) {
    return celsius * 1.8 + 32;
  }

  private static String plain(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  /**
   * A finished page or sentence in which her unit stands beside each metric one: {@code 72 \u00b0C
   * (162 \u00b0F)}. No figure is replaced, so that one that was worked out stays as it was; only
   * fields are shown in hers.
   */
  public String beside(String page) {
    if (metric()) {
      return page;
    }
    String html = new HerFields(this).shown(page);
    StringBuilder out = new StringBuilder(html.length() + html.length() / 16);
    Matcher tag = TAG.matcher(html);
    int at = 0;
    int alone = 0;
    while (tag.find()) {
      String text = html.substring(at, tag.start());
      out.append(alone == 0 ? said(text) : text).append(tag.group());
      at = tag.end();
      if (LEFT_ALONE.contains(tag.group(2).toLowerCase(Locale.ROOT))) {
        alone = Math.max(0, alone + (tag.group(1).isEmpty() ? 1 : -1));
      }
    }
    return out.append(said(html.substring(at))).toString();
  }

  private String said(String text) {
    Matcher found = AMOUNT.matcher(text);
    StringBuilder out = new StringBuilder();
    while (found.find()) {
      String hers = hers(found);
      found.appendReplacement(
          out, Matcher.quoteReplacement(found.group() + (hers.isEmpty() ? "" : " (" + hers + ")")));
    }
    return found.appendTail(out).toString();
  }

  private String hers(Matcher found) {
    BigDecimal first = number(found.group(1));
    BigDecimal second = found.group(3) == null ? null : number(found.group(3));
    boolean two = found.group(3) != null;
    if (first == null || (two && second == null)) {
      return "";
    }
    String unit = found.group(4);
    String one = converted(first.doubleValue(), unit);
    if (one.isEmpty() || second == null) {
      return one;
    }
    String figure = one.substring(0, one.indexOf(' '));
    return figure + " " + found.group(2) + " " + converted(second.doubleValue(), unit);
  }

  private String converted(double value, String unit) {
    return switch (unit) {
      case "\u00b0C" -> celsius() ? "" : plain(fahrenheit(value), 0) + " \u00b0F";
      case "g" -> massUnit == Unit.GRAM ? "" : plain(value / GRAMS_IN_OUNCE, 2) + " oz";
      case "kg" -> massUnit == Unit.GRAM ? "" : plain(value * 1000 / GRAMS_IN_POUND, 2) + " lb";
      default -> lengthUnit == Unit.MILLIMETRE ? "" : plain(value / MM_IN_INCH, 2) + " in";
    };
  }

  /** A number as the page wrote it; null where its marks could mean two things. */
  private @org.jspecify.annotations.Nullable BigDecimal number(String text) {
    boolean point = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == '.';
    boolean fits =
        point ? text.matches("-?(\\d+|\\d{1,3}(,\\d{3})+)(\\.\\d+)?") : text.matches("-?\\d+");
    return fits ? new BigDecimal(text.replace(",", "")) : null;
  }
}

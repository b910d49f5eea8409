package pourwright.sheet;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import pourwright.material.UnitKind;

/** Numbers and times as they stand on the sheets. */
final class Figures {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
  private static final DateTimeFormatter SHORT_DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private Figures() {}

  /** Grams as a scale shows them: a tenth below a kilogram, whole above. */
  static String grams(double grams) {
    return grams < 1000
        ? String.format(Locale.ROOT, "%.1f", grams)
        : String.format(Locale.ROOT, "%,.0f", grams).replace(',', '\u2009');
  }

  static String amount(UnitKind unit, long units) {
    double amount = unit.fromSmall(units);
    return (unit == UnitKind.COUNT ? String.format(Locale.ROOT, "%.0f", amount) : grams(amount))
        + " "
        + unit.unit();
  }

  static String number(double value, int digits) {
    return String.format(Locale.ROOT, "%." + digits + "f", value);
  }

  static String percent(double fraction, int digits) {
    return number(100 * fraction, digits) + " %";
  }

  static String day(LocalDate day) {
    return DAY.format(day);
  }

  static String shortDay(LocalDate day) {
    return SHORT_DAY.format(day);
  }

  static String clock(ZonedDateTime time) {
    return CLOCK.format(time);
  }

  /** A wait in the largest unit that says it well. */
  static String length(int minutes) {
    if (minutes < 90) {
      return minutes + " min";
    }
    if (minutes < 36 * 60) {
      return trimmed(minutes / 60.0) + " h";
    }
    return trimmed(minutes / 1440.0) + " d";
  }

  private static String trimmed(double value) {
    String one = number(value, 1);
    return one.endsWith(".0") ? one.substring(0, one.length() - 2) : one;
  }
}

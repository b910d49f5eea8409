package pourwright.page;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import pourwright.quantity.QuantityText;
import pourwright.work.Studio;

/**
 * What every place gets: the studio's use cases and books, the clock, the zone in which the studio
 * keeps its day, and how numbers and dates are written.
 *
 * @param studio all that can be done, and a way to look at the books
 * @param clock the time; never ask the system directly
 * @param zone the studio's zone
 * @param locale how numbers and dates are written
 */
public record Desk(Studio studio, Clock clock, ZoneId zone, Locale locale) {
  /** The moment. */
  public Instant now() {
    return clock.instant();
  }

  /** The studio's day. */
  public LocalDate today() {
    return LocalDate.ofInstant(now(), zone);
  }

  /** A moment as a clock shows it, such as {@code 14:05}. */
  public String clockTime(Instant moment) {
    return DateTimeFormatter.ofPattern("HH:mm", locale).withZone(zone).format(moment);
  }

  /** A moment with its day, such as {@code 3 Mar 2026, 14:05}. */
  public String dayAndTime(Instant moment) {
    return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
        .withLocale(locale)
        .withZone(zone)
        .format(moment);
  }

  /** A day as people of this locale write it. */
  public String day(LocalDate day) {
    return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale).format(day);
  }

  /** The units she chose in the settings, as they stand now. */
  public Units units() {
    return Units.of(studio.look(books -> books.settings().all()), locale);
  }

  /** Reads and writes amounts as people of this locale do. */
  public QuantityText quantities() {
    return QuantityText.in(locale);
  }
}

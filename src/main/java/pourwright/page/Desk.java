package pourwright.page;

import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;

/**
 * What every place gets: the clock, the zone in which the studio keeps its day, and the language
 * numbers and dates are shown in.
 *
 * @param clock the time; never ask the system directly
 * @param zone the studio's zone
 * @param locale how numbers and dates are written
 */
public record Desk(Clock clock, ZoneId zone, Locale locale) {}

package pourwright.label;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.TemporalAdjusters;
import java.util.Set;
import java.util.TreeSet;

/**
 * Days on which the federal offices of the United States are closed: 5 U.S.C. 6103(a), from memory;
 * one that falls on a Saturday is kept on the Friday before, on a Sunday on the Monday after.
 */
public final class FederalHolidays {
  private FederalHolidays() {}

  /** The days as they are kept in the years from the first to the second, both included. */
  public static Set<LocalDate> between(int first, int last) {
    Set<LocalDate> days = new TreeSet<>();
    for (int year = first; year <= last; year++) {
      for (LocalDate day : of(year)) {
        days.add(kept(day));
      }
    }
    return days;
  }

  private static LocalDate kept(LocalDate day) {
    return switch (day.getDayOfWeek()) {
      case SATURDAY -> day.minusDays(1);
      case SUNDAY -> day.plusDays(1);
      default -> day;
    };
  }

  private static Set<LocalDate> of(int year) {
    return Set.of(
        LocalDate.of(year, 1, 1),
        nth(year, Month.JANUARY, 3, DayOfWeek.MONDAY),
        nth(year, Month.FEBRUARY, 3, DayOfWeek.MONDAY),
        LocalDate.of(year, 5, 1).with(TemporalAdjusters.lastInMonth(DayOfWeek.MONDAY)),
        LocalDate.of(year, 6, 19),
        LocalDate.of(year, 7, 4),
        nth(year, Month.SEPTEMBER, 1, DayOfWeek.MONDAY),
        nth(year, Month.OCTOBER, 2, DayOfWeek.MONDAY),
        LocalDate.of(year, 11, 11),
        nth(year, Month.NOVEMBER, 4, DayOfWeek.THURSDAY),
        LocalDate.of(year, 12, 25));
  }

  private static LocalDate nth(int year, Month month, int nth, DayOfWeek day) {
    return LocalDate.of(year, month, 1).with(TemporalAdjusters.dayOfWeekInMonth(nth, day));
  }
}

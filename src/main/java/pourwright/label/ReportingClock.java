package pourwright.label;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;

/**
 * Days for a report of a hazard to the United States commission (16 CFR 1115.14): up to ten working
 * days to investigate, five for word to reach the responsible person; a report is due within 24
 * hours of reportable information. Weekends and the given holidays do not count.
 */
public final class ReportingClock {
  /** Working days to investigate. */
  public static final int INVESTIGATE_DAYS = 10;

  /** Working days for word to reach the responsible person. */
  public static final int REACH_DAYS = 5;

  private ReportingClock() {}

  /** Last day to investigate what was learned on a day. */
  public static LocalDate investigateBy(LocalDate learned, Set<LocalDate> holidays) {
    return after(learned, INVESTIGATE_DAYS, holidays);
  }

  /** Last day for word to reach the responsible person. */
  public static LocalDate reachBy(LocalDate learned, Set<LocalDate> holidays) {
    return after(learned, REACH_DAYS, holidays);
  }

  private static LocalDate after(LocalDate day, int workingDays, Set<LocalDate> holidays) {
    LocalDate date = day;
    int left = workingDays;
    while (left > 0) {
      date = date.plusDays(1);
      boolean weekend =
          date.getDayOfWeek() == DayOfWeek.SATURDAY || date.getDayOfWeek() == DayOfWeek.SUNDAY;
      left -= weekend || holidays.contains(date) ? 0 : 1;
    }
    return date;
  }
}

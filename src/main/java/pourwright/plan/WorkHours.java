package pourwright.plan;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pourwright.quantity.OutOfRange;

/**
 * The hours somebody is at work, by the clock on the wall.
 *
 * @param week stretches of work of each day of the week; a day that is left out is free
 * @param daysOff days on which none of it counts
 * @param taken appointments within the hours
 */
public record WorkHours(
    Map<DayOfWeek, List<Stretch>> week, Set<LocalDate> daysOff, List<Appointment> taken) {
  /** Hours without an appointment. */
  public WorkHours(Map<DayOfWeek, List<Stretch>> week, Set<LocalDate> daysOff) {
    this(week, daysOff, List.of());
  }

  /**
   * A fixed appointment: these hands do nothing else.
   *
   * @param day by the clock on the wall
   * @param at from and to
   */
  public record Appointment(LocalDate day, Stretch at) {}

  /**
   * A stretch of work by the clock.
   *
   * @param from begin, inclusive
   * @param to end, exclusive; after {@code from}, the same day
   */
  public record Stretch(LocalTime from, LocalTime to) {
    /** Checks the order. */
    public Stretch {
      if (!from.isBefore(to)) {
        throw new OutOfRange(
            "hours", "work from " + from + " to " + to + " is no stretch", "end it later");
      }
    }
  }

  /** Copies. */
  public WorkHours {
    week = Map.copyOf(week);
    daysOff = Set.copyOf(daysOff);
    taken = List.copyOf(taken);
  }

  /** House: Monday to Friday, 9 to 12:30 and 13:30 to 18. */
  public static WorkHours house() {
    List<Stretch> day =
        List.of(
            new Stretch(LocalTime.of(9, 0), LocalTime.of(12, 30)),
            new Stretch(LocalTime.of(13, 30), LocalTime.of(18, 0)));
    Map<DayOfWeek, List<Stretch>> week = new java.util.EnumMap<>(DayOfWeek.class);
    for (DayOfWeek weekday : DayOfWeek.values()) {
      if (weekday.getValue() <= 5) {
        week.put(weekday, day);
      }
    }
    return new WorkHours(week, Set.of());
  }

  /** The same hours with days off. */
  public WorkHours without(Set<LocalDate> days) {
    return new WorkHours(week, days, taken);
  }

  /** The same hours with one more appointment. */
  public WorkHours but(Appointment appointment) {
    List<Appointment> more = new ArrayList<>(taken);
    more.add(appointment);
    return new WorkHours(week, daysOff, more);
  }

  /**
   * The stretches as windows in minutes that really pass from an origin: a clock that jumps in the
   * middle of one makes it an hour shorter or longer. What lies before the origin is cut off.
   */
  public List<Window> windows(Instant origin, ZoneId zone, int horizonMin) {
    List<Window> windows = new ArrayList<>();
    LocalDate day = LocalDate.ofInstant(origin, zone);
    LocalDate last = LocalDate.ofInstant(origin.plus(Duration.ofMinutes(horizonMin)), zone);
    for (; !day.isAfter(last); day = day.plusDays(1)) {
      if (daysOff.contains(day)) {
        continue;
      }
      for (Stretch stretch : week.getOrDefault(day.getDayOfWeek(), List.of())) {
        int from = Math.max(0, minute(origin, day.atTime(stretch.from()), zone, true));
        int to = Math.min(horizonMin, minute(origin, day.atTime(stretch.to()), zone, false));
        if (from < to) {
          windows.add(new Window(from, to));
        }
      }
    }
    for (Appointment one : taken) {
      int from = minute(origin, one.day().atTime(one.at().from()), zone, false);
      int to = minute(origin, one.day().atTime(one.at().to()), zone, true);
      windows = less(windows, from, to);
    }
    return windows;
  }

  private static List<Window> less(List<Window> windows, int from, int to) {
    List<Window> left = new ArrayList<>();
    for (Window window : windows) {
      int before = Math.min(window.toMin(), from);
      int after = Math.max(window.fromMin(), to);
      if (window.fromMin() < before) {
        left.add(new Window(window.fromMin(), before));
      }
      if (after < window.toMin()) {
        left.add(new Window(after, window.toMin()));
      }
    }
    return left;
  }

  private static int minute(Instant origin, LocalDateTime clock, ZoneId zone, boolean up) {
    long seconds = Duration.between(origin, clock.atZone(zone).toInstant()).getSeconds();
    return Math.toIntExact(Math.floorDiv(up ? seconds + 59 : seconds, 60));
  }
}

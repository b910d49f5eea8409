package pourwright.plan;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * A class: an order of seats at a fixed hour.
 *
 * @param order the order's number or name
 * @param design code of the candle whose vessel each seat casts, or that each seat pours
 * @param does what a seat does
 * @param seats people, 1 to 100
 * @param day the day, by the studio's clock
 * @param from when it begins
 * @param to when it ends, the same day
 * @param teacher initials of the person whose hands it takes
 */
public record SeatClass(
    String order,
    String design,
    Does does,
    int seats,
    LocalDate day,
    LocalTime from,
    LocalTime to,
    String teacher) {
  /** Most seats of one class that are believed. */
  public static final int SEATS_MAX = 100;

  /** What a seat does. */
  public enum Does {
    /** Mixes and casts one vessel. */
    CAST,
    /** Wicks and pours one candle into a vessel that stands ready. */
    POUR
  }

  /** Checks seats and hours. */
  public SeatClass {
    Check.between("seats", seats, 1, SEATS_MAX);
    if (!from.isBefore(to)) {
      throw new OutOfRange(
          "to", "a class from " + from + " to " + to + " has no hours", "end it later");
    }
  }

  /** How long it is by the clock, in minutes. */
  public int minutes() {
    return Math.toIntExact(Duration.between(from, to).toMinutes());
  }
}

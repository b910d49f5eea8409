package pourwright.plan;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import pourwright.quantity.OutOfRange;

/**
 * Days on which parcels go: the weekdays of the post, none that would be on its way on a hot day,
 * none after the last post before a feast.
 *
 * @param week weekdays on which the post takes parcels
 * @param hot days that will be hot; candles soften in a van
 * @param last last posts
 */
public record PostDays(Set<DayOfWeek> week, Set<LocalDate> hot, List<LastPost> last) {
  /** The post takes parcels every day and no day is hot. */
  public static final PostDays EVERY_DAY =
      new PostDays(EnumSet.allOf(DayOfWeek.class), Set.of(), List.of());

  /** A day counts as hot from this forecast on, °C; house, common practice, no source. */
  public static final int HOT_FROM_C = 28;

  /** Days that a parcel is on its way beside the one it is posted on; house. */
  public static final int DAYS_ON_THE_WAY = 2;

  private static final int LOOK_BACK_DAYS = 60;

  /**
   * The last day on which the post takes what is to be there by a feast.
   *
   * @param last that day
   * @param feast until when it counts
   */
  public record LastPost(LocalDate last, LocalDate feast) {}

  /** Copies; a post that never comes cannot be. */
  public PostDays {
    if (week.isEmpty()) {
      throw new OutOfRange("week", "the post comes on no day", "name a weekday");
    }
    week = Set.copyOf(week);
    hot = Set.copyOf(hot);
    last = List.copyOf(last);
  }

  /** The last day on or before a parcel's day on which it can go; the day itself when none can. */
  public LocalDate onOrBefore(LocalDate parcelDay) {
    LocalDate day = parcelDay;
    for (LastPost post : last) {
      if (day.isAfter(post.last()) && !day.isAfter(post.feast())) {
        day = post.last();
      }
    }
    for (int back = 0; back < LOOK_BACK_DAYS; back++, day = day.minusDays(1)) {
      if (week.contains(day.getDayOfWeek()) && !hotOnTheWay(day)) {
        return day;
      }
    }
    return parcelDay;
  }

  /** The first day on or after a day on which a parcel can go; the day itself when none can. */
  public LocalDate onOrAfter(LocalDate ready) {
    LocalDate day = ready;
    for (int ahead = 0; ahead < LOOK_BACK_DAYS; ahead++, day = day.plusDays(1)) {
      if (week.contains(day.getDayOfWeek()) && !hotOnTheWay(day) && onOrBefore(day).equals(day)) {
        return day;
      }
    }
    return ready;
  }

  private boolean hotOnTheWay(LocalDate posted) {
    return hot.stream()
        .anyMatch(h -> !h.isBefore(posted) && !h.isAfter(posted.plusDays(DAYS_ON_THE_WAY)));
  }

  /**
   * Reads what was typed; empty texts mean every day, no hot day, no last post.
   *
   * @param week weekdays by their first three letters, such as {@code mon wed fri}
   * @param hot days such as {@code 2026-07-14}, with blanks between
   * @param last pairs such as {@code 2026-12-18 for 2026-12-24}, with commas between
   * @throws OutOfRange naming what cannot be read
   */
  public static PostDays read(String week, String hot, String last) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (String word : words(week, "[ ,]+")) {
      days.add(weekday(word));
    }
    Set<LocalDate> hotDays = new TreeSet<>();
    for (String word : words(hot, "[ ,]+")) {
      hotDays.add(day("hot", word));
    }
    List<LastPost> posts = new ArrayList<>();
    for (String pair : words(last, "[,\n]+")) {
      List<String> two = words(pair, " for ");
      if (two.size() != 2) {
        throw new OutOfRange(
            "last", "'" + pair.strip() + "' is no last post", "such as 2026-12-18 for 2026-12-24");
      }
      posts.add(new LastPost(day("last", two.get(0)), day("last", two.get(1))));
    }
    return new PostDays(days.isEmpty() ? EVERY_DAY.week() : days, hotDays, posts);
  }

  private static List<String> words(String text, String between) {
    return List.of(text.strip().split(between, -1)).stream().filter(w -> !w.isBlank()).toList();
  }

  private static DayOfWeek weekday(String word) {
    for (DayOfWeek day : DayOfWeek.values()) {
      String name = day.name().toLowerCase(Locale.ROOT);
      if (word.length() >= 3 && name.startsWith(word.toLowerCase(Locale.ROOT))) {
        return day;
      }
    }
    throw new OutOfRange("week", "'" + word + "' is no weekday", "such as mon wed fri");
  }

  private static LocalDate day(String field, String word) {
    try {
      return LocalDate.parse(word.strip());
    } catch (DateTimeException e) {
      throw new OutOfRange(field, "'" + word.strip() + "' is no day", "such as 2026-07-14");
    }
  }
}

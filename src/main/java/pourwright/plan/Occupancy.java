package pourwright.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * When one thing or person is taken, in the order it was taken in, filed by the days it touches.
 */
final class Occupancy {
  private static final int DAY_MIN = 24 * 60;

  /** Taken from a minute (inclusive) to another (exclusive), so much of it, by a family. */
  record Taken(int fromMin, int toMin, int amount, String family) {}

  private final int capacity;
  private final List<Window> windows;
  private final int washMin;
  private final List<Taken> taken = new ArrayList<>();
  private final List<List<Taken>> byDay = new ArrayList<>();

  Occupancy(int capacity, List<Window> windows, int washMin) {
    this.capacity = capacity;
    this.windows = windows;
    this.washMin = washMin;
  }

  int size() {
    return taken.size();
  }

  void take(Taken more) {
    taken.add(more);
    int last = lastDay(more);
    while (byDay.size() <= last) {
      byDay.add(new ArrayList<>());
    }
    for (int day = day(more.fromMin()); day <= last; day++) {
      byDay.get(day).add(more);
    }
  }

  /** Gives back everything taken after the first so many. */
  void backTo(int size) {
    while (taken.size() > size) {
      Taken last = taken.remove(taken.size() - 1);
      for (int day = day(last.fromMin()); day <= lastDay(last); day++) {
        List<Taken> filed = byDay.get(day);
        filed.remove(filed.size() - 1); // the newest of all is the newest of each of its days
      }
    }
  }

  private static int day(int minute) {
    return Math.max(
        0, minute / DAY_MIN); // what was taken before the plan begins is of its first day
  }

  private static int lastDay(Taken t) {
    return day(Math.max(t.fromMin(), t.toMin() - 1));
  }

  private List<Taken> on(int day) {
    return day < byDay.size() ? byDay.get(day) : List.of();
  }

  /** The first minute from {@code at} on at which it can be taken; {@code limit} when never. */
  int firstFree(Taken wish, int limit) {
    int minutes = wish.toMin() - wish.fromMin();
    int at = wish.fromMin();
    while (at < limit) {
      int inWindow = Windows.firstWithin(windows, at, minutes, limit);
      int free = inWindow >= limit ? limit : clear(inWindow, minutes, wish);
      if (free == at) {
        return at;
      }
      at = free;
    }
    return limit;
  }

  /** {@code at} when nothing stands in the way there, else the end of what stands in the way. */
  private int clear(int at, int minutes, Taken wish) {
    int blockedUntil = at;
    int end = at + minutes;
    int last = Math.min(byDay.size() - 1, day(end + washMin));
    for (int day = day(at - washMin); day <= last; day++) {
      for (Taken t : on(day)) {
        boolean other = washMin > 0 && !t.family().equals(wish.family());
        int wash = other ? washMin : 0;
        boolean meets = t.fromMin() - wash < end && at < t.toMin() + wash;
        int until = meets ? other ? t.toMin() + wash : released(t, at, wish) : at;
        if (until > at) {
          blockedUntil = blockedUntil == at ? until : Math.min(blockedUntil, until);
        }
      }
    }
    return Math.max(blockedUntil, at);
  }

  /**
   * When one that is met leaves room, or another that is taken together with it; {@code at} where
   * there is room beside it. Sums up only where the one that is met does not fill it alone.
   */
  private int released(Taken met, int at, Taken wish) {
    if (met.amount() + wish.amount() > capacity) {
      return met.toMin();
    }
    if (capacity <= 1) {
      return at;
    }
    int minute = Math.max(at, met.fromMin());
    int sum = wish.amount();
    int first = met.toMin();
    for (Taken t : on(day(minute))) {
      if (t.fromMin() <= minute && minute < t.toMin()) {
        sum += t.amount();
        first = Math.min(first, t.toMin());
      }
    }
    return sum > capacity ? first : at;
  }
}

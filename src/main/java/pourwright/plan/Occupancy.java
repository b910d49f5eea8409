package pourwright.plan;

import java.util.ArrayList;
import java.util.List;

/** When one thing or person is taken, in the order it was taken in. */
final class Occupancy {
  /** Taken from a minute (inclusive) to another (exclusive), so much of it, by a family. */
  record Taken(int fromMin, int toMin, int amount, String family) {}

  private final int capacity;
  private final List<Window> windows;
  private final int washMin;
  private final List<Taken> taken = new ArrayList<>();

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
  }

  /** Gives back everything taken after the first so many. */
  void backTo(int size) {
    taken.subList(size, taken.size()).clear();
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
    for (Taken t : taken) {
      boolean other = washMin > 0 && !t.family().equals(wish.family());
      int wash = other ? washMin : 0;
      boolean meets = t.fromMin() - wash < end && at < t.toMin() + wash;
      if (meets && (other || tooMany(t, at, wish))) {
        int until = t.toMin() + wash;
        blockedUntil = blockedUntil == at ? until : Math.min(blockedUntil, until);
      }
    }
    return Math.max(blockedUntil, at);
  }

  /** Sums up only where the one that is met does not fill it alone. */
  private boolean tooMany(Taken met, int at, Taken wish) {
    return met.amount() + wish.amount() > capacity
        || (capacity > 1 && amountAt(Math.max(at, met.fromMin())) + wish.amount() > capacity);
  }

  private int amountAt(int minute) {
    int sum = 0;
    for (Taken t : taken) {
      sum += t.fromMin() <= minute && minute < t.toMin() ? t.amount() : 0;
    }
    return sum;
  }
}

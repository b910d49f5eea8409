package pourwright.plan;

import java.util.List;

/** Looking for room in a list of windows that is merged and in order. */
final class Windows {
  private Windows() {}

  /**
   * The first minute from {@code at} on from which {@code minutes} lie in one window; {@code limit}
   * when there is none. No windows at all means always.
   */
  static int firstWithin(List<Window> windows, int at, int minutes, int limit) {
    if (windows.isEmpty()) {
      return at;
    }
    for (int i = firstEndingAfter(windows, at); i < windows.size(); i++) {
      Window window = windows.get(i);
      int start = Math.max(at, window.fromMin());
      if (start + minutes <= window.toMin()) {
        return Math.min(start, limit);
      }
    }
    return limit;
  }

  /**
   * As {@link #firstWithin}, and beginning at least {@code before} minutes before its window ends.
   */
  static int firstHot(List<Window> windows, int at, int minutes, int before, int limit) {
    for (int i = firstEndingAfter(windows, at); i < windows.size(); i++) {
      Window window = windows.get(i);
      int start = Math.max(at, window.fromMin());
      if (start + minutes <= window.toMin() && start <= window.toMin() - before) {
        return Math.min(start, limit);
      }
    }
    return limit;
  }

  /** Index of the first window that does not end before a minute. */
  private static int firstEndingAfter(List<Window> windows, int at) {
    int low = 0;
    int high = windows.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (windows.get(middle).toMin() < at) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}

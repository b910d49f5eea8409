package pourwright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pourwright.quantity.OutOfRange;

/**
 * A stretch of time in whole minutes from a problem's origin.
 *
 * @param fromMin first minute, inclusive
 * @param toMin last minute, exclusive; after {@code fromMin}
 */
public record Window(int fromMin, int toMin) {
  /** Checks that the window is not empty. */
  public Window {
    if (toMin <= fromMin) {
      throw new OutOfRange(
          "window", "the window from " + fromMin + " to " + toMin + " is empty", "end it later");
    }
  }

  /** True when the step from {@code startMin} to {@code endMin} lies wholly inside. */
  public boolean holds(int startMin, int endMin) {
    return fromMin <= startMin && endMin <= toMin;
  }

  /** The windows in order, those that touch or overlap made one. */
  public static List<Window> merged(List<Window> windows) {
    List<Window> sorted = new ArrayList<>(windows);
    sorted.sort(Comparator.comparingInt(Window::fromMin));
    List<Window> merged = new ArrayList<>();
    for (Window next : sorted) {
      int last = merged.size() - 1;
      if (last >= 0 && next.fromMin() <= merged.get(last).toMin()) {
        Window before = merged.get(last);
        merged.set(last, new Window(before.fromMin(), Math.max(before.toMin(), next.toMin())));
      } else {
        merged.add(next);
      }
    }
    return merged;
  }
}

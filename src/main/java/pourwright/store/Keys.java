package pourwright.store;

import org.jspecify.annotations.Nullable;

/** Where a page begins. */
final class Keys {
  private Keys() {}

  /** The number below which a newest-first page begins. */
  static long below(@Nullable String after) {
    return after == null ? Long.MAX_VALUE : Long.parseLong(after);
  }

  /** The text above which an alphabetical page begins. */
  static String above(@Nullable String after) {
    return after == null ? "" : after;
  }
}

package pourwright.page.house;

import pourwright.page.guard.TurnedAway;

/** Numbers and paths that come in with a request. */
final class Numbers {
  private Numbers() {}

  /** The number of something in the books. */
  static long of(String text) {
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException e) {
      throw new TurnedAway(404, "There is no such thing in the books", "Look it up in its list.");
    }
  }

  /** A path of this studio to go back to; the first page when it is none. */
  static String ownPath(String path) {
    boolean own = path.startsWith("/") && !path.startsWith("//") && !path.contains("\\");
    return own ? path : "/";
  }
}

package pourwright.batch;

/** What comes of telling a piece that something happened to it. */
public sealed interface Move {

  /** It now stands here. */
  record Moved(PieceState state) implements Move {}

  /**
   * That cannot happen to a piece that stands where this one does.
   *
   * @param sentence why, and what has to come first
   */
  record Barred(String sentence) implements Move {}
}

package pourwright.plan;

/** What a step asks of a person. */
public enum StepKind {
  /** A pair of hands, from its first minute to its last, without a break. */
  HANDS("hands"),
  /** Somebody in the room, hands free: a warm melter, a hot plate, a lit candle. */
  WATCH("watch"),
  /** Nobody: goes on by itself, through the night too. */
  WAIT("wait");

  private final String words;

  StepKind(String words) {
    this.words = words;
  }

  /** The kind as it is shown. */
  public String words() {
    return words;
  }
}

package pourwright.batch;

/** The two kinds of batch. */
public enum BatchKind {
  /** One mixing of powder that fills one or more molds. */
  CAST("cast"),
  /** One pitcher or melter charge that fills one or more vessels. */
  POUR("pour");

  private final String words;

  BatchKind(String words) {
    this.words = words;
  }

  /** The word a person reads. */
  public String words() {
    return words;
  }
}

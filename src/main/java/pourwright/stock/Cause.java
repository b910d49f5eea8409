package pourwright.stock;

/** Why an amount moved. */
public enum Cause {
  /** Came in from a supplier. */
  RECEIVED("received"),
  /** Drawn for a batch. */
  DRAWN("drawn"),
  /** Put back unused. */
  RETURNED("returned"),
  /** Difference found at a count. */
  COUNTED("counted"),
  /** Thrown away: spilt, lumped, gone off, left in the pitcher. */
  WASTE("waste"),
  /** Used up in a test. */
  TEST("test"),
  /** Given away. */
  GIFT("gift"),
  /** Sold as it is, a tin or a bag. */
  SOLD("sold"),
  /** The exact reverse of an earlier movement. */
  REVERSED("reversed");

  private final String words;

  Cause(String words) {
    this.words = words;
  }

  /** The word a person reads. */
  public String words() {
    return words;
  }
}

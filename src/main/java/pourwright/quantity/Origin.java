package pourwright.quantity;

/** Where a number came from. Shown beside every number that a result stands on. */
public enum Origin {
  /** Measured in this studio, with this studio's instruments. */
  MEASURED_HERE("measured here"),
  /** Read from the supplier's sheet or certificate. */
  SUPPLIERS_SHEET("supplier's sheet"),
  /** A usual value for things of this kind; carries a wide range. */
  TYPICAL("typical"),
  /** Worked out by Pourwright from other numbers. */
  WORKED_OUT("worked out");

  private final String words;

  Origin(String words) {
    this.words = words;
  }

  /** The origin as it is shown and as it is written in headless documents. */
  public String words() {
    return words;
  }

  /**
   * Reads an origin from the words that {@link #words()} gives, or from the constant's name.
   *
   * @throws OutOfRange when the text names no origin
   */
  public static Origin of(String text) {
    for (Origin origin : values()) {
      if (origin.words.equalsIgnoreCase(text.strip()) || origin.name().equalsIgnoreCase(text)) {
        return origin;
      }
    }
    throw new OutOfRange(
        "origin",
        "'" + text + "' is not an origin",
        "use measured here, supplier's sheet, typical or worked out");
  }
}

package pourwright.sheet;

import pourwright.quantity.OutOfRange;

/** A size of paper, in mm. */
public enum Paper {
  /** 210 by 297 mm. */
  A4(210, 297),
  /** 8.5 by 11 in. */
  LETTER(215.9, 279.4);

  private final double widthMm;
  private final double heightMm;

  Paper(double widthMm, double heightMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /** Width, upright. */
  public double widthMm() {
    return widthMm;
  }

  /** Height, upright. */
  public double heightMm() {
    return heightMm;
  }

  /**
   * Reads {@code a4} or {@code letter}.
   *
   * @throws OutOfRange for anything else
   */
  public static Paper of(String text) {
    for (Paper paper : values()) {
      if (paper.name().equalsIgnoreCase(text.strip())) {
        return paper;
      }
    }
    throw new OutOfRange("paper", "'" + text + "' is not a paper", "use a4 or letter");
  }
}

package pourwright.quantity;

/** What is measured, and the small unit in which amounts of it are whole numbers. */
public enum Dimension {
  /** Whole micrograms. */
  MASS("a weight", "18 oz or 500 g"),
  /** Whole nanolitres. */
  VOLUME("a volume", "250 ml or 8 fl oz"),
  /** Whole nanometres. */
  LENGTH("a length", "80 mm or 3 1/8 in"),
  /** Whole square micrometres. */
  AREA("an area", "250 cm2"),
  /** Whole microkelvins above absolute zero. */
  TEMPERATURE("a temperature", "71 °C or 160 °F"),
  /** Whole milligrams in a litre. */
  DENSITY("a density", "0.86 g/ml"),
  /** Whole milliseconds. */
  TIME("a time", "45 min or 1 h 30 min");

  private final String words;
  private final String example;

  Dimension(String words, String example) {
    this.words = words;
    this.example = example;
  }

  /** As in a sentence: "a weight". */
  public String words() {
    return words;
  }

  /** How such an amount may be written. */
  public String example() {
    return example;
  }
}

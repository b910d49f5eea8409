package pourwright.cli;

/** What a number in a request may be. */
public enum Range {
  /** Any finite number. */
  ANY("", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, true),
  /** Greater than zero. */
  POSITIVE("must be greater than 0", 0, Double.POSITIVE_INFINITY, false),
  /** Zero or more. */
  NOT_NEGATIVE("must not be below 0", 0, Double.POSITIVE_INFINITY, true),
  /** From 0 to 1. */
  FRACTION("must be from 0 to 1 (8 % is written 0.08)", 0, 1, true),
  /** A temperature in degrees Celsius that matter can have. */
  CELSIUS("must be a temperature above absolute zero in °C", -273.15, 5000, true);

  private final String sentence;
  private final double low;
  private final double high;
  private final boolean lowAllowed;

  Range(String sentence, double low, double high, boolean lowAllowed) {
    this.sentence = sentence;
    this.low = low;
    this.high = high;
    this.lowAllowed = lowAllowed;
  }

  boolean allows(double value) {
    return Double.isFinite(value) && value <= high && (lowAllowed ? value >= low : value > low);
  }

  String sentence() {
    return sentence;
  }
}

package pourwright.quantity;

/** Counts with their words, so that one of a thing is never said as if it were many. */
public final class Counted {
  private Counted() {}

  /**
   * A count with its words, such as "1 cast" and "3 casts", or "1 piece was sold" and "0 pieces
   * were sold". Each stands as a phrase of its own in the books of the other languages.
   *
   * @param one what is said of exactly one
   * @param many what is said of none and of several
   */
  public static String of(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  /** A place in a row, such as "1st", "2nd", "3rd", "11th" and "22nd". */
  public static String nth(long place) {
    long tens = place % 100;
    boolean teen = tens >= 11 && tens <= 13;
    return place
        + switch (teen ? 0 : (int) (place % 10)) {
          case 1 -> "st";
          case 2 -> "nd";
          case 3 -> "rd";
          default -> "th";
        };
  }
}

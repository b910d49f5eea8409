package pourwright.batch;

import java.util.Locale;
import pourwright.quantity.OutOfRange;

/**
 * The short mark on a piece, a tray card or a batch: a number and one check character that catches
 * every single wrong character and every pair that changed places.
 *
 * <p>Source: ISO 7064 MOD 37-2 (pure system, modulus 37, radix 2; alphabet 0-9 A-Z and * as a check
 * character only).
 *
 * @param text body and check character, upper case
 */
public record Mark(String text) {
  private static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";
  private static final int MODULUS = 37;
  private static final int RADIX = 2;
  private static final int BODY_MAX = 30;

  /**
   * Checks the check character.
   *
   * @throws OutOfRange when the mark is not a valid one
   */
  public Mark {
    if (!isValid(text)) {
      throw new OutOfRange(
          "mark", "'" + text + "' is not a mark", "a character is wrong or two changed places");
    }
  }

  /** The mark of a number, zero or more. */
  public static Mark ofNumber(long number) {
    if (number < 0) {
      throw new OutOfRange("number", "number is " + number, "give 0 or more");
    }
    return ofBody(Long.toString(number));
  }

  /**
   * The mark of a body of digits and capital letters.
   *
   * @throws OutOfRange when the body is empty, longer than 30 or holds another character
   */
  public static Mark ofBody(String body) {
    if (body.isEmpty() || body.length() > BODY_MAX || !isAlphanumeric(body)) {
      throw new OutOfRange(
          "number",
          "'" + body + "' cannot be a mark's number",
          "use 1 to " + BODY_MAX + " digits or capital letters");
    }
    return new Mark(body + checkCharacter(body));
  }

  /** Reads what a person typed or a code gave: blanks, dashes and small letters are forgiven. */
  public static Mark read(String typed) {
    return new Mark(cleaned(typed));
  }

  /** What was typed without blanks and dashes, in capitals; not checked. */
  public static String cleaned(String typed) {
    return typed.strip().replaceAll("[\\s\\-_.]", "").toUpperCase(Locale.ROOT);
  }

  /** True when the last character is the check character of those before it. */
  public static boolean isValid(String text) {
    if (text.length() < 2 || text.length() > BODY_MAX + 1) {
      return false;
    }
    String body = text.substring(0, text.length() - 1);
    return isAlphanumeric(body) && checkCharacter(body) == text.charAt(text.length() - 1);
  }

  /** The check character for a body of digits and capital letters. */
  static char checkCharacter(String body) {
    int sum = 0;
    for (int i = 0; i < body.length(); i++) {
      sum = (sum + ALPHABET.indexOf(body.charAt(i))) * RADIX % MODULUS;
    }
    return ALPHABET.charAt((MODULUS + 1 - sum) % MODULUS);
  }

  /** The mark without its check character. */
  public String body() {
    return text.substring(0, text.length() - 1);
  }

  /** The number, when the body is one. */
  public long number() {
    return Long.parseLong(body());
  }

  /** True when the body is a plain number that a ledger could have given out. */
  public boolean isNumbered() {
    return body().length() <= 18 && body().chars().allMatch(c -> c >= '0' && c <= '9');
  }

  private static boolean isAlphanumeric(String body) {
    return body.chars().allMatch(c -> (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z'));
  }
}

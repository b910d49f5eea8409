package pourwright.hazard;

import pourwright.quantity.OutOfRange;

/**
 * A CAS Registry Number: two to seven digits, two digits, a check digit. The check digit is the sum
 * of the other digits, each times its place counted from the right, modulo 10 (the registry's
 * published rule).
 */
public record CasNumber(String text) {
  /** Checks form and check digit. */
  public CasNumber {
    if (!isValid(text)) {
      throw new OutOfRange(
          "cas",
          "'" + text + "' is not a CAS number: its form or its check digit is wrong",
          "read it again from the sheet; for example 78-70-6");
    }
  }

  /** True when form and check digit are right. */
  public static boolean isValid(String text) {
    if (!text.matches("[1-9][0-9]{1,6}-[0-9]{2}-[0-9]")) {
      return false;
    }
    String digits = text.replace("-", "");
    return checkDigit(digits.substring(0, digits.length() - 1))
        == digits.charAt(digits.length() - 1) - '0';
  }

  /** The check digit that belongs to the digits before it. */
  static int checkDigit(String digits) {
    int sum = 0;
    for (int place = 1; place <= digits.length(); place++) {
      sum += place * (digits.charAt(digits.length() - place) - '0');
    }
    return sum % 10;
  }
}

package pourwright.label;

import java.math.BigInteger;
import java.util.Locale;
import java.util.Map;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * The unique formula identifier of a mixture for poison centres: 16 characters of base 31 with a
 * check character in front (ECHA UFI Developers Manual; layout as reproduced from its public test
 * vector).
 *
 * @param text with hyphens, for example {@code C23S-PQ2V-AMH9-VVRF}
 */
public record Ufi(String text) {
  private static final String ALPHABET = "0123456789ACDEFGHJKMNPQRSTUVWXY";
  private static final int[] PERMUTATION = {5, 4, 3, 7, 2, 8, 9, 10, 1, 0, 11, 6, 12, 13, 14};
  private static final BigInteger BASE = BigInteger.valueOf(31);
  private static final int FRANCE_GROUP = 1;
  private static final int AUSTRIA_GROUP = 5;
  private static final long AUSTRIA_CODE = 15;
  private static final Map<String, String> COUNTRIES =
      Map.of("AT", "U and 8 digits", "FR", "a key of two characters and 9 digits");

  /** Checks length, alphabet and check character. */
  public Ufi {
    if (!isValid(text)) {
      throw new OutOfRange(
          "ufi",
          "'" + text + "' is not a UFI: a character or the check character is wrong",
          "copy it again; it has four groups of four characters");
    }
  }

  /** True when the identifier is well formed; hyphens and spaces do not matter. */
  public static boolean isValid(String text) {
    String plain = text.replaceAll("[- ]", "");
    if (plain.length() != 16) {
      return false;
    }
    int sum = 0;
    for (int i = 0; i < 16; i++) {
      int value = ALPHABET.indexOf(plain.charAt(i));
      if (value < 0) {
        return false;
      }
      sum += (i + 1) * value;
    }
    return sum % 31 == 0;
  }

  /** An identifier as a person types it, with or without {@code UFI:}, hyphens and blanks. */
  public static Ufi read(String typed) {
    String plain =
        typed.toUpperCase(Locale.ROOT).replaceFirst("^\\s*UFI\\s*:", "").replaceAll("[- ]", "");
    return new Ufi(plain.length() == 16 ? grouped(plain) : plain);
  }

  /** Countries whose VAT numbers can be packed, by their two letters, with how one looks. */
  public static Map<String, String> countries() {
    return COUNTRIES;
  }

  /**
   * The identifier of a formula of a company by its VAT number.
   *
   * @param country one of {@link #countries()}; other countries pack their VAT numbers by rules
   *     that are not held here
   * @param vat without the country's letters
   * @param formulation number of the formula, 0 to 268,435,455, never used twice
   */
  public static Ufi of(String country, String vat, long formulation) {
    String plain = vat.replaceAll("[ .-]", "").toUpperCase(Locale.ROOT);
    return switch (country) {
      case "AT" -> austrian(plain, formulation);
      case "FR" -> french(plain, formulation);
      default ->
          throw new OutOfRange(
              "country",
              "VAT numbers of '" + country + "' cannot be packed here",
              "have the UFI made by the agency's own generator and type it in; it is checked");
    };
  }

  /**
   * The identifier of a formula of an Austrian VAT number.
   *
   * @param vat {@code U} and eight digits
   * @param formulation number of the formula, 0 to 268,435,455, never used twice
   */
  public static Ufi austrian(String vat, long formulation) {
    if (!vat.matches("U[0-9]{8}")) {
      throw new OutOfRange("vat", "'" + vat + "' is not an Austrian VAT number", "U and 8 digits");
    }
    long company = (AUSTRIA_CODE << 34) + Long.parseLong(vat.substring(1));
    return packed(AUSTRIA_GROUP, company, formulation);
  }

  /**
   * The identifier of a formula of a French VAT number: a group of its own without a country code,
   * the two characters of the key in base 36 before the nine digits. Read off a published
   * identifier, which it reproduces.
   *
   * @param vat two letters or digits (no I, no O) and nine digits
   * @param formulation number of the formula, 0 to 268,435,455, never used twice
   */
  public static Ufi french(String vat, long formulation) {
    if (!vat.matches("[0-9A-HJ-NP-Z]{2}[0-9]{9}")) {
      throw new OutOfRange(
          "vat", "'" + vat + "' is not a French VAT number", "a key of two and nine digits");
    }
    long key = 36L * Character.digit(vat.charAt(0), 36) + Character.digit(vat.charAt(1), 36);
    return packed(
        FRANCE_GROUP, key * 1_000_000_000L + Long.parseLong(vat.substring(2)), formulation);
  }

  private static Ufi packed(int group, long company, long formulation) {
    Check.between("formulation", formulation, 0, (1L << 28) - 1);
    BigInteger payload =
        BigInteger.valueOf(formulation)
            .shiftLeft(4)
            .add(BigInteger.valueOf(group))
            .shiftLeft(41)
            .add(BigInteger.valueOf(company))
            .shiftLeft(1);
    return new Ufi(grouped(withCheck(permuted(payload))));
  }

  private static int[] permuted(BigInteger payload) {
    int[] digits = new int[15];
    BigInteger rest = payload;
    for (int i = 14; i >= 0; i--) {
      BigInteger[] parts = rest.divideAndRemainder(BASE);
      digits[i] = parts[1].intValue();
      rest = parts[0];
    }
    int[] permuted = new int[15];
    for (int i = 0; i < 15; i++) {
      permuted[i] = digits[PERMUTATION[i]];
    }
    return permuted;
  }

  private static String withCheck(int[] digits) {
    int sum = 0;
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 15; i++) {
      sum += (i + 2) * digits[i];
      text.append(ALPHABET.charAt(digits[i]));
    }
    return ALPHABET.charAt(Math.floorMod(-sum, 31)) + text.toString();
  }

  private static String grouped(String plain) {
    return plain.replaceAll("(.{4})(?=.)", "$1-");
  }
}

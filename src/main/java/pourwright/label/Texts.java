package pourwright.label;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The standard texts of labels by code and language. The statements are those of Regulation (EC)
 * 1272/2008 Annexes II to IV, written down from memory in all four languages and to be compared
 * with the official text before the first print; the care lines are our own words.
 */
public final class Texts {
  /** How the texts came to be; shown beside them. */
  public static final String ORIGIN =
      "Statement texts are from memory in every language: compare them with the official text"
          + " before the first print.";

  private static final List<Map<String, String>> ROWS = DataRows.of("texts.txt", "\\|");
  private static final Map<String, Map<String, String>> BY_CODE = byCode();

  private Texts() {}

  private static Map<String, Map<String, String>> byCode() {
    Map<String, Map<String, String>> byCode = new LinkedHashMap<>();
    for (Map<String, String> row : ROWS) {
      byCode.put(row.getOrDefault("code", ""), row);
    }
    return byCode;
  }

  /** Codes of the languages, in the order of the columns. */
  static List<String> codes() {
    List<String> codes = new ArrayList<>(ROWS.get(0).keySet());
    codes.remove("code");
    return codes;
  }

  /** True when there is a text of that code. */
  public static boolean has(String code) {
    return BY_CODE.containsKey(code);
  }

  /** The text of a code; the code itself where there is no text, as for sentences without one. */
  public static String of(String code, Language language) {
    Map<String, String> row = BY_CODE.get(code);
    return row == null ? code : row.getOrDefault(language.code(), code);
  }

  /** The text with a value put in where it says {@code {name}}. */
  static String of(String code, Language language, String name, String value) {
    return of(code, language).replace("{" + name + "}", value);
  }
}

package pourwright.order;

import java.text.DateFormatSymbols;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Names of months in the languages that shops export in; a name two languages differ on is none.
 */
final class MonthNames {
  private static final List<String> LANGUAGES =
      List.of("en", "de", "fr", "es", "it", "nl", "pt", "sv", "da", "nb", "fi", "pl");
  private static final Map<String, Integer> MONTHS = months();

  private MonthNames() {}

  private static Map<String, Integer> months() {
    Map<String, Integer> found = new HashMap<>();
    Set<String> unclear = new HashSet<>();
    for (String language : LANGUAGES) {
      DateFormatSymbols symbols = DateFormatSymbols.getInstance(Locale.forLanguageTag(language));
      for (String[] names : List.of(symbols.getMonths(), symbols.getShortMonths())) {
        for (int month = 0; month < 12; month++) {
          String name = folded(names[month]);
          Integer before = name.length() < 3 ? null : found.put(name, month + 1);
          if (before != null && before != month + 1) {
            unclear.add(name);
          }
        }
      }
    }
    found.keySet().removeAll(unclear);
    return found;
  }

  private static String folded(String name) {
    return Blanks.folded(name).replace(".", "");
  }

  /** The month's number from 1, or null. */
  static @Nullable Integer of(String name) {
    return MONTHS.get(folded(name));
  }
}

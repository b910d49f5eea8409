package pourwright.order;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import pourwright.card.CandleDesign;

/**
 * What a shop calls each candle: the card's code, its name, and names that were mapped once. Case,
 * blanks and forms of letters do not matter.
 */
public final class DesignNames {
  private final Map<String, String> codes;
  private final Map<String, String> twice;

  private DesignNames(Map<String, String> codes, Map<String, String> twice) {
    this.codes = codes;
    this.twice = twice;
  }

  /**
   * Names of the given designs.
   *
   * @param designs all candles that can be ordered
   * @param aliases the shop's name to a code, as mapped before
   */
  public static DesignNames of(Collection<CandleDesign> designs, Map<String, String> aliases) {
    Map<String, String> codes = new HashMap<>();
    Map<String, String> twice = new HashMap<>();
    for (CandleDesign design : designs) {
      for (String name : List.of(design.code(), design.name())) {
        String before = codes.put(Blanks.folded(name), design.code());
        if (before != null && !before.equals(design.code())) {
          twice.put(Blanks.folded(name), before + " and " + design.code());
        }
      }
    }
    aliases.forEach((name, code) -> codes.put(Blanks.folded(name), code));
    return new DesignNames(codes, twice);
  }

  Optional<String> code(String text) {
    String folded = Blanks.folded(text);
    return twice.containsKey(folded) ? Optional.empty() : Optional.ofNullable(codes.get(folded));
  }

  String unknown(String text) {
    String both = twice.get(Blanks.folded(text));
    if (both != null) {
      return "'" + text + "' could be " + both;
    }
    List<String> near = near(text);
    String hint = near.isEmpty() ? "" : "; did you mean " + String.join(" or ", near) + "?";
    return "no candle is called '" + text + "'" + hint;
  }

  private List<String> near(String text) {
    String folded = Blanks.folded(text);
    TreeSet<String> near = new TreeSet<>();
    for (var entry : codes.entrySet()) {
      if (distance(folded, entry.getKey()) <= Math.max(1, folded.length() / 4)) {
        near.add(entry.getValue());
      }
    }
    return new ArrayList<>(near).subList(0, Math.min(3, near.size()));
  }

  /** Levenshtein distance; source: Wagner and Fischer 1974. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int same = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(same, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}

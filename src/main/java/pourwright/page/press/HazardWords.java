package pourwright.page.press;

import java.util.ArrayList;
import java.util.List;
import pourwright.hazard.Classification;

/** A classification in words, for pages of other places. */
public final class HazardWords {
  private HazardWords() {}

  /** What it is in a few codes. */
  public static String words(Classification found) {
    return CandleWords.words(found);
  }

  /** What the label says: substances to be named, statements, and precautions. */
  public static List<String> statements(Classification found) {
    List<String> lines = new ArrayList<>();
    if (!found.namedSubstances().isEmpty()) {
      lines.add("Names " + String.join(", ", found.namedSubstances()));
    }
    lines.addAll(CandleWords.statements(found));
    return lines;
  }
}

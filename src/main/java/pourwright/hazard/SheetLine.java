package pourwright.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;

/**
 * A substance as it was read from pasted text: numbers stay as they stand there until they are
 * confirmed.
 *
 * @param lineNumber of its first line, from 1
 * @param source the lines it was read from
 * @param name as read
 * @param cas with a right check digit, or empty
 * @param lowText lower end of the share in per cent as written, or empty
 * @param highText upper end, or the share itself, as written; empty when none was found
 * @param classes as read
 * @param limits specific limits in per cent as written, by class
 * @param acuteMText as written, or empty
 * @param chronicMText as written, or empty
 * @param oralText acute toxicity estimate, mg/kg, as written, or empty
 * @param dermalText likewise
 * @param doubts what has to be looked at before it is used
 */
public record SheetLine(
    int lineNumber,
    String source,
    String name,
    String cas,
    String lowText,
    String highText,
    Set<HazardClass> classes,
    Map<HazardClass, String> limits,
    String acuteMText,
    String chronicMText,
    String oralText,
    String dermalText,
    List<String> doubts) {

  /** Copies the collections. */
  public SheetLine {
    classes = Set.copyOf(classes);
    limits = Map.copyOf(limits);
    doubts = List.copyOf(doubts);
  }

  /** True when nothing has to be looked at. */
  public boolean isClear() {
    return doubts.isEmpty();
  }

  /** Every number that was read, as it stands in the text. */
  public List<String> numbers() {
    List<String> numbers = new ArrayList<>();
    for (String text : List.of(lowText, highText, acuteMText, chronicMText, oralText, dermalText)) {
      if (!text.isEmpty()) {
        numbers.add(text);
      }
    }
    numbers.addAll(limits.values());
    return numbers;
  }

  /**
   * The line as an ingredient.
   *
   * @throws OutOfRange when no share was read or a number cannot be
   */
  public Ingredient ingredient() {
    if (highText.isEmpty()) {
      throw new OutOfRange(
          "fraction_high", "no share was read for " + name, "type it from the sheet");
    }
    double high = fraction(highText);
    double low = lowText.isEmpty() ? (isUpperBound() ? 0 : high) : fraction(lowText);
    Map<HazardClass, Double> specific = new LinkedHashMap<>();
    limits.forEach((c, text) -> specific.put(c, fraction(text)));
    Double oral = number(oralText);
    Double dermal = number(dermalText);
    return new Ingredient(
        name,
        cas.isEmpty() ? null : new CasNumber(cas),
        new Share(low, high),
        classes,
        specific,
        whole(acuteMText),
        whole(chronicMText),
        new Ingredient.AcuteFacts(
            new AcuteEstimates(oral, dermal, null, null), new LinkedHashSet<>(), true));
  }

  private boolean isUpperBound() {
    return source.contains("<") || source.contains("≤");
  }

  private static double fraction(String text) {
    return Double.parseDouble(text.replace(',', '.')) / 100;
  }

  private static @Nullable Double number(String text) {
    return text.isEmpty() ? null : Double.valueOf(text.replace(',', '.'));
  }

  private static @Nullable Integer whole(String text) {
    return text.isEmpty() ? null : Integer.valueOf(text);
  }
}

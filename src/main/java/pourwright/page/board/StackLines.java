package pourwright.page.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pourwright.card.OutlineForm;
import pourwright.card.SolidForm;
import pourwright.quantity.OutOfRange;

/** A stack of outlines as it is typed, one level a line: {@code 40 polygon 8 76}. */
final class StackLines {
  private static final Map<String, String> FORMS = new LinkedHashMap<>();
  private static final Map<String, List<String>> SIZES =
      Map.of(
          "circle", List.of("diameter_mm"),
          "ellipse", List.of("length_mm", "width_mm"),
          "superellipse", List.of("length_mm", "width_mm", "exponent"),
          "stadium", List.of("length_mm", "width_mm"),
          "rounded_rectangle", List.of("length_mm", "width_mm", "corner_mm"),
          "polygon", List.of("sides", "across_flats_mm", "corner_mm"));

  static {
    FORMS.put("round", "circle");
    FORMS.put("oval", "ellipse");
    FORMS.put("squarish", "superellipse");
    FORMS.put("stadium", "stadium");
    FORMS.put("rectangle", "rounded_rectangle");
    FORMS.put("polygon", "polygon");
  }

  private StackLines() {}

  /**
   * The levels of a text, from the bottom up.
   *
   * @throws OutOfRange with the line that cannot be read
   */
  static List<SolidForm.Storey> read(String text) {
    List<SolidForm.Storey> storeys = new ArrayList<>();
    int line = 0;
    for (String row : text.split("\\R", -1)) {
      line++;
      if (!row.isBlank()) {
        storeys.add(storey(row.strip().replace(',', '.').split("\\s+", -1), line));
      }
    }
    return storeys;
  }

  private static SolidForm.Storey storey(String[] words, int line) {
    String form = words.length < 2 ? "" : FORMS.getOrDefault(words[1], words[1]);
    List<String> names = SIZES.getOrDefault(form, List.of());
    if (names.isEmpty() || words.length - 2 > names.size()) {
      throw unreadable(line);
    }
    Map<String, Double> sizes = new TreeMap<>();
    if (names.contains("corner_mm")) {
      sizes.put("corner_mm", 0.0);
    }
    for (int i = 2; i < words.length; i++) {
      sizes.put(names.get(i - 2), number(words[i], line));
    }
    try {
      return new SolidForm.Storey(number(words[0], line), new OutlineForm(form, sizes, List.of()));
    } catch (OutOfRange e) {
      throw new OutOfRange("stack", "line " + line + ": " + e.sentence(), e.hint());
    }
  }

  private static double number(String word, int line) {
    try {
      return Double.parseDouble(word);
    } catch (NumberFormatException e) {
      throw unreadable(line);
    }
  }

  private static OutOfRange unreadable(int line) {
    return new OutOfRange(
        "stack",
        "line " + line + " of the stack cannot be read",
        "write height, shape and sizes in mm: 40 round 80, or 60 polygon 8 76");
  }

  /** The levels as they are typed; empty for none. */
  static String write(
      List<SolidForm.Storey> storeys, java.util.function.DoubleFunction<String> number) {
    StringBuilder lines = new StringBuilder();
    for (SolidForm.Storey storey : storeys) {
      OutlineForm outline = storey.outline();
      String word =
          FORMS.entrySet().stream()
              .filter(e -> e.getValue().equals(outline.form()))
              .map(Map.Entry::getKey)
              .findFirst()
              .orElse(outline.form());
      lines.append(number.apply(storey.heightMm())).append(' ').append(word);
      for (String name : SIZES.getOrDefault(outline.form(), List.of())) {
        lines.append(' ').append(number.apply(outline.sizes().getOrDefault(name, 0.0)));
      }
      lines.append('\n');
    }
    return lines.toString();
  }
}

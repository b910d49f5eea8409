package pourwright.hazard;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;

/**
 * A hazard class with its category and, where the class has several, its route or effect: {@code
 * Acute Tox. 4 (oral)}, {@code STOT SE 3 (H336)}.
 *
 * @param kind the class
 * @param category for example {@code 1B}; empty where the class has none
 * @param detail {@code oral}, {@code dermal}, {@code inhalation}, {@code H335}, {@code H336}, or
 *     empty
 */
public record HazardClass(HazardKind kind, String category, String detail)
    implements Comparable<HazardClass> {
  private static final Pattern WRITTEN =
      Pattern.compile(
          "(?<kind>[a-z][a-z .-]*?)[ .]*(?:cat(?:egory)?[ .]*)?"
              + "(?:(?<category>[1-4][a-c]?)(?![a-z0-9])(?<rest>.*)|[(;,].*)?");
  private static final List<String> ROUTES = List.of("oral", "dermal", "inhalation");
  private static final Map<String, String> ROUTE_OF_STATEMENT =
      Map.ofEntries(
          Map.entry("h300", "oral"),
          Map.entry("h301", "oral"),
          Map.entry("h302", "oral"),
          Map.entry("h310", "dermal"),
          Map.entry("h311", "dermal"),
          Map.entry("h312", "dermal"),
          Map.entry("h330", "inhalation"),
          Map.entry("h331", "inhalation"),
          Map.entry("h332", "inhalation"));

  /** A class without route or effect. */
  public static HazardClass of(HazardKind kind, String category) {
    return new HazardClass(kind, category, "");
  }

  /** The code used on sheets and in headless documents, without route or effect. */
  public String code() {
    return category.isEmpty() ? kind.label() : kind.label() + " " + category;
  }

  /** The code with its route or effect. */
  public String fullCode() {
    return detail.isEmpty() ? code() : code() + " (" + detail + ")";
  }

  /** The category's figure: 1 for 1, 1A, 1B and 1C; 0 where the class has none. */
  public int level() {
    return category.isEmpty() || !Character.isDigit(category.charAt(0))
        ? 0
        : category.charAt(0) - '0';
  }

  /** True when the other is the same class at the same level, whatever the subcategory. */
  public boolean sameLevel(HazardClass other) {
    return kind == other.kind
        && level() == other.level()
        && (detail.isEmpty() || other.detail.isEmpty() || detail.equals(other.detail));
  }

  /** True when the route or effect that the class needs is not said. */
  public boolean lacksDetail() {
    return detail.isEmpty()
        && (kind == HazardKind.ACUTE_TOX || (kind == HazardKind.STOT_SE && category.equals("3")));
  }

  /** This class with each route or effect it may mean: the cautious reading of an unsaid one. */
  public List<HazardClass> cautious() {
    if (!lacksDetail()) {
      return List.of(this);
    }
    List<String> details = kind == HazardKind.ACUTE_TOX ? ROUTES : List.of("H335", "H336");
    return details.stream().map(d -> new HazardClass(kind, category, d)).toList();
  }

  /**
   * Reads a class as sheets write it: {@code Skin Sens. 1B}, {@code skin sens 1b}, {@code Acute
   * Tox. 4 (oral)}, {@code Acute Tox. 4; H302}, {@code STOT SE 3 (H336)}, or a statement's code
   * alone, {@code H317}.
   *
   * @throws OutOfRange when it names no class
   */
  public static HazardClass parse(String written) {
    String text = written.replace('*', ' ').replaceAll("\\s+", " ").strip();
    String lower = text.toLowerCase(Locale.ROOT);
    if (lower.matches("(eu)?h[0-9]{3}[a-z]{0,3}")) {
      return ofStatement(text);
    }
    Matcher matcher = WRITTEN.matcher(lower);
    if (matcher.matches()) {
      String category = matcher.group("category") == null ? "" : matcher.group("category");
      String rest = matcher.group("rest") == null ? "" : matcher.group("rest");
      HazardKind kind = kindNamed(matcher.group("kind"));
      if (kind != null) {
        return checked(written, kind, category.toUpperCase(Locale.ROOT), rest);
      }
    }
    throw notAClass(written);
  }

  private static HazardClass checked(
      String written, HazardKind kind, String category, String rest) {
    String known = kind == HazardKind.EYE_IRRIT && category.startsWith("2") ? "2" : category;
    if (!kind.categories().contains(known)) {
      throw notAClass(written);
    }
    return new HazardClass(kind, known, detail(kind, known, rest));
  }

  private static String detail(HazardKind kind, String category, String rest) {
    Set<String> found = new LinkedHashSet<>();
    if (kind == HazardKind.ACUTE_TOX) {
      ROUTE_OF_STATEMENT.forEach(
          (code, route) -> {
            if (rest.contains(code)) {
              found.add(route);
            }
          });
      for (String route : List.of("oral", "dermal", "inhal", "vapour", "vapor", "dust", "mist")) {
        if (rest.contains(route)) {
          found.add(ROUTES.contains(route) ? route : "inhalation");
        }
      }
    } else if (kind == HazardKind.STOT_SE && category.equals("3")) {
      if (rest.contains("h335") || rest.contains("irrit") || rest.contains("resp")) {
        found.add("H335");
      }
      if (rest.contains("h336") || rest.contains("narc") || rest.contains("drows")) {
        found.add("H336");
      }
    }
    return found.size() == 1 ? found.iterator().next() : "";
  }

  private static @Nullable HazardKind kindNamed(String written) {
    String letters = letters(written);
    for (HazardKind kind : HazardKind.values()) {
      if (letters(kind.label()).equals(letters)) {
        return kind;
      }
    }
    return letters.equals("asp") ? HazardKind.ASP_TOX : null;
  }

  private static String letters(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
  }

  private static HazardClass ofStatement(String written) {
    String code = written.toUpperCase(Locale.ROOT);
    String plain = code.startsWith("H") ? code.substring(0, 4) : code;
    List<HazardClass> meant = new ArrayList<>();
    for (ClassFacts facts : Tables.shared().facts()) {
      if (facts.statement().equals(plain)) {
        meant.add(facts.hazardClass());
      }
    }
    if (meant.isEmpty()) {
      throw notAClass(written);
    }
    return meant.stream()
        .filter(c -> c.category().length() <= 1)
        .findFirst()
        .orElseGet(() -> meant.get(0));
  }

  private static OutOfRange notAClass(String written) {
    return new OutOfRange(
        "classes",
        "'" + written + "' is not a hazard class that is known here",
        "write it as the sheet does, for example Skin Sens. 1B, Acute Tox. 4 (oral), Aquatic"
            + " Chronic 2");
  }

  @Override
  public int compareTo(HazardClass other) {
    int byKind = kind.compareTo(other.kind);
    if (byKind != 0) {
      return byKind;
    }
    int byCategory = category.compareTo(other.category);
    return byCategory != 0 ? byCategory : detail.compareTo(other.detail);
  }

  @Override
  public String toString() {
    return fullCode();
  }
}

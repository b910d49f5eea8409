package pourwright.page.board;

import java.util.Map;

/**
 * One field of a card's form.
 *
 * @param name of the field
 * @param label as it stands above it
 * @param hint what helps to fill it in, or an empty string
 * @param unit shown behind it, or an empty string
 * @param kind how it is entered
 * @param choices code to words, for choices
 * @param optional whether it may be left out
 */
public record Entry(
    String name,
    String label,
    String hint,
    String unit,
    Kind kind,
    Map<String, String> choices,
    boolean optional) {

  /** How a field is entered. */
  public enum Kind {
    /** One line. */
    TEXT,
    /** One line of digits. */
    NUMBER,
    /** Several lines. */
    AREA,
    /** One of a list. */
    CHOICE
  }

  static Entry text(String name, String label) {
    return new Entry(name, label, "", "", Kind.TEXT, Map.of(), false);
  }

  static Entry number(String name, String label, String unit) {
    return new Entry(name, label, "", unit, Kind.NUMBER, Map.of(), false);
  }

  static Entry area(String name, String label, String hint) {
    return new Entry(name, label, hint, "", Kind.AREA, Map.of(), true);
  }

  static Entry choice(String name, String label, Map<String, String> choices) {
    return new Entry(name, label, "", "", Kind.CHOICE, choices, false);
  }

  Entry hint(String words) {
    return new Entry(name, label, words, unit, kind, choices, optional);
  }

  Entry mayBeLeftOut() {
    return new Entry(name, label, hint, unit, kind, choices, true);
  }

  /** The kind as the template asks for it. */
  public String kindWord() {
    return kind.name();
  }
}

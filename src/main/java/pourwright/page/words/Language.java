package pourwright.page.words;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The languages in which the pages can be read, by their BCP 47 tag. */
public enum Language {
  ENGLISH("en", "English"),
  GERMAN("de", "Deutsch"),
  FRENCH("fr", "Français"),
  SPANISH("es", "Español"),
  /** Every known phrase in brackets and accents: text that was forgotten stays plain. */
  PSEUDO("qps", "Ŝĥöŵń"),
  /** As {@link #PSEUDO}, read from right to left, to see that the layout bears it. */
  PSEUDO_RIGHT_TO_LEFT("qps-rtl", "Ŝĥöŵń ←");

  private final String tag;
  private final String ownName;

  Language(String tag, String ownName) {
    this.tag = tag;
    this.ownName = ownName;
  }

  /** The tag, such as {@code de}. */
  public String tag() {
    return tag;
  }

  /** The language's name for itself. */
  public String ownName() {
    return ownName;
  }

  /** The direction of writing, {@code ltr} or {@code rtl}. */
  public String direction() {
    return this == PSEUDO_RIGHT_TO_LEFT ? "rtl" : "ltr";
  }

  boolean pseudo() {
    return this == PSEUDO || this == PSEUDO_RIGHT_TO_LEFT;
  }

  /** The languages a person may choose from. */
  public static List<Language> offered() {
    return Arrays.stream(values()).filter(l -> !l.pseudo()).toList();
  }

  /** The language with this tag; nothing when there is none. */
  public static Optional<Language> tagged(String tag) {
    return Arrays.stream(values()).filter(l -> l.tag.equals(tag)).findFirst();
  }

  /** The language of a studio that writes its numbers so; English when it is none of ours. */
  public static Language of(Locale locale) {
    return tagged(locale.getLanguage()).orElse(ENGLISH);
  }
}

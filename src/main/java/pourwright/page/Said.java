package pourwright.page;

import pourwright.work.Outcome;

/**
 * What the program says after an act: finished strings.
 *
 * @param tone how it is shown
 * @param headline one short sentence
 * @param detail what more there is to know, or an empty string
 */
public record Said(Tone tone, String headline, String detail) {
  /** The four ways of saying something. */
  public enum Tone {
    /** Done and recorded. */
    DONE,
    /** Worth reading before going on. */
    NOTE,
    /** A limit of the trade is exceeded or something is short. */
    WARNING,
    /** Not done. */
    REFUSED;

    /** The word used for the style of the box. */
    public String css() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** Done, with nothing to add. */
  public static Said done(String headline) {
    return new Said(Tone.DONE, headline, "");
  }

  /** Worth reading. */
  public static Said note(String headline, String detail) {
    return new Said(Tone.NOTE, headline, detail);
  }

  /** A warning. */
  public static Said warning(String headline, String detail) {
    return new Said(Tone.WARNING, headline, detail);
  }

  /** Not done: what a use case said about it. */
  public static Said refused(Outcome.Refused<?> refused) {
    return told(refused.sentence(), refused.hint());
  }

  /** Not done, in the words of a use case or of the books: made into whole sentences. */
  static Said told(String sentence, String hint) {
    return new Said(Tone.REFUSED, sentence(sentence), sentence(hint));
  }

  private static String sentence(String text) {
    if (text.isEmpty()) {
      return "";
    }
    String capital = text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    return capital.endsWith(".") ? capital : capital + ".";
  }

  /** Not done, and why. */
  public static Said refused(String headline, String detail) {
    return new Said(Tone.REFUSED, headline, detail);
  }
}

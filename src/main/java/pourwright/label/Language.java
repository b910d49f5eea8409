package pourwright.label;

import java.util.List;
import pourwright.quantity.OutOfRange;

/**
 * A language that labels can be printed in: a column of {@code texts.txt}. A further language is a
 * further column.
 *
 * @param code two letters
 */
public record Language(String code) {
  /** English. */
  public static final Language ENGLISH = new Language("en");

  /** Checks that there are texts in it. */
  public Language {
    if (!Texts.codes().contains(code)) {
      throw new OutOfRange(
          "language", "there are no texts in '" + code + "'", "use one of " + Texts.codes());
    }
  }

  /** All languages there are texts in. */
  public static List<Language> all() {
    return Texts.codes().stream().map(Language::new).toList();
  }
}

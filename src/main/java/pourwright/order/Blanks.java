package pourwright.order;

import java.text.Normalizer;
import java.util.Locale;

/** Blanks of every kind: no-break, narrow, zero-width and the mark of byte order. */
final class Blanks {
  private Blanks() {}

  static boolean isBlank(int c) {
    return Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || (c >= 0x200b && c <= 0x200f)
        || c == 0x2060
        || c == 0xfeff;
  }

  static String strip(String text) {
    int from = 0;
    int to = text.length();
    while (from < to && isBlank(text.charAt(from))) {
      from++;
    }
    while (to > from && isBlank(text.charAt(to - 1))) {
      to--;
    }
    return text.substring(from, to);
  }

  /** Letters in one form and case, runs of blanks as one space: what names are compared by. */
  static String folded(String text) {
    StringBuilder out = new StringBuilder();
    boolean gap = false;
    String form = Normalizer.normalize(strip(text), Normalizer.Form.NFKC);
    for (int c : form.codePoints().toArray()) {
      if (isBlank(c)) {
        gap = true;
      } else {
        if (gap) {
          out.append(' ');
        }
        gap = false;
        out.appendCodePoint(c);
      }
    }
    return out.toString().toLowerCase(Locale.ROOT);
  }
}

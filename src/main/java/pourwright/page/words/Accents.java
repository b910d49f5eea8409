package pourwright.page.words;

import java.util.regex.Pattern;

/** Makes a phrase look translated and stay readable, so that what was forgotten stands out. */
final class Accents {
  private static final String PLAIN = "aceginorsuyzACEGINORSUYZ";
  private static final String MARKED = "áçéğíñóŕšúýžÁÇÉĞÍÑÓŔŠÚÝŽ";
  private static final Pattern KEPT = Pattern.compile("(\\{\\d}|</?\\d/?>)");

  private Accents() {}

  static String on(String phrase) {
    StringBuilder out = new StringBuilder("⟦");
    var kept = KEPT.matcher(phrase);
    int from = 0;
    while (kept.find()) {
      mark(out, phrase.substring(from, kept.start()));
      out.append(kept.group());
      from = kept.end();
    }
    mark(out, phrase.substring(from));
    return out.append('⟧').toString();
  }

  private static void mark(StringBuilder out, String text) {
    for (int i = 0; i < text.length(); i++) {
      int at = PLAIN.indexOf(text.charAt(i));
      out.append(at < 0 ? text.charAt(i) : MARKED.charAt(at));
    }
  }
}

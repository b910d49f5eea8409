package pourwright.page.words;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the templates for what they say: texts, spoken attributes, labels handed to parts. */
final class TemplatePhrases {
  private static final char HOLE = '\uE000';
  private static final char END = '\uE001';
  private static final Pattern NOT_SHOWN =
      Pattern.compile("(?m)^@(?:import|param)[^\\n]*$|<%--.*?--%>|<!--.*?-->", Pattern.DOTALL);
  private static final Pattern SPOKEN =
      Pattern.compile(
          "(?<=\\s)(?:placeholder|aria-label|title|alt|data-label|data-say-[a-z]+)=\"([^\"]*)\"");
  private static final Pattern HANDED =
      Pattern.compile("\\b(?:title|heading|label|hint|legend)\\s*=\\s*\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern CHOSEN = Pattern.compile("[?:]\\s*\"((?:[^\"\\\\]|\\\\.)*)\"");

  private final Set<String> phrases = new TreeSet<>();

  private TemplatePhrases() {}

  /** Every phrase of the templates below this folder. */
  static Set<String> in(Path folder) {
    TemplatePhrases found = new TemplatePhrases();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".jte")).toList()) {
        found.read(Files.readString(file));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return found.phrases;
  }

  /** Every phrase of one template. */
  static Set<String> of(String template) {
    TemplatePhrases found = new TemplatePhrases();
    found.read(template);
    return found.phrases;
  }

  private void read(String template) {
    String shown = NOT_SHOWN.matcher(template).replaceAll("");
    StringBuilder page = new StringBuilder();
    int at = 0;
    while (at < shown.length()) {
      char c = shown.charAt(at);
      if (c == '$' && (shown.startsWith("{", at + 1) || shown.startsWith("unsafe{", at + 1))) {
        int end = close(shown, shown.indexOf("{", at), '{', '}');
        handed(CHOSEN, shown.substring(at, end));
        page.append(HOLE);
        at = end;
      } else if (c == '@' && at + 1 < shown.length() && Character.isLetter(shown.charAt(at + 1))) {
        at = command(shown, at);
        page.append(END);
      } else {
        page.append(c == '`' || shown.startsWith("@`", at) ? END : c);
        at++;
      }
    }
    Matcher tag = Pattern.compile("<[^>]*>|" + END).matcher(page);
    StringBuilder text = new StringBuilder();
    int from = 0;
    boolean silent = false;
    while (tag.find()) {
      text.append(page, from, tag.start());
      if (!silent) {
        keep(text.toString());
      }
      text.setLength(0);
      Matcher spoken = SPOKEN.matcher(tag.group());
      while (spoken.find()) {
        keep(spoken.group(1));
      }
      silent = tag.group().contains("translate=\"no\"");
      from = tag.end();
    }
    keep(page.substring(from));
  }

  /** Passes a command of the template; what it hands to a part is read. */
  private int command(String shown, int at) {
    int end = at + 1;
    while (end < shown.length()
        && (Character.isLetterOrDigit(shown.charAt(end))
            || shown.charAt(end) == '.'
            || shown.charAt(end) == '-'
            || shown.charAt(end) == '_')) {
      end++;
    }
    if (end >= shown.length() || shown.charAt(end) != '(') {
      return end;
    }
    int content = shown.indexOf("@`", end);
    int close = close(shown, end, '(', ')');
    int stop = content >= 0 && content < close ? content + 2 : close;
    String arguments = shown.substring(end, stop);
    handed(HANDED, arguments);
    handed(CHOSEN, arguments);
    return stop;
  }

  private void handed(Pattern pattern, String source) {
    Matcher literal = pattern.matcher(source);
    while (literal.find()) {
      String said = literal.group(1).replace("\\\"", "\"");
      if (said.indexOf(' ') > 0 || said.matches("\\p{Lu}\\p{Ll}{2,}")) {
        keep(said);
      }
    }
  }

  /** The place behind the bracket that closes the one at {@code open}; strings are passed over. */
  private static int close(String text, int open, char opens, char closes) {
    int depth = 0;
    for (int i = open; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        i = text.indexOf('"', i + 1);
        while (i > 0 && text.charAt(i - 1) == '\\') {
          i = text.indexOf('"', i + 1);
        }
        if (i < 0) {
          return text.length();
        }
      } else if (c == opens) {
        depth++;
      } else if (c == closes && --depth == 0) {
        return i + 1;
      }
    }
    return text.length();
  }

  private void keep(String raw) {
    String tidy = raw.replaceAll("\\s+", " ").strip().replace("&#34;", "\"").replace("&#39;", "'");
    StringBuilder phrase = new StringBuilder();
    int holes = 0;
    for (char c : tidy.toCharArray()) {
      phrase.append(c == HOLE ? "{" + holes++ + "}" : String.valueOf(c));
    }
    String words = phrase.toString().replaceAll("\\{\\d+}", " ");
    if (!Phrasebook.needsNoWords(words) && holes < 10) {
      phrases.add(phrase.toString());
    }
  }

  /** The phrases, one a line, for whoever translates. */
  public static void main(String[] folder) {
    in(Path.of(folder[0])).forEach(System.out::println);
  }
}

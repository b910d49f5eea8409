package pourwright.page.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Puts a finished page into another language. It reads the page as a person does: a run of text,
 * with the markup inside it, is one phrase; where the whole run is not in the book, each text of it
 * is looked up by itself. What stands in an element with {@code translate="no"}, in a text field or
 * in a script is left alone. What the book does not have stays English.
 */
public final class Interpreter {
  private static final Set<String> INLINE =
      Set.of(
          "a", "strong", "em", "b", "i", "span", "kbd", "small", "abbr", "sub", "sup", "bdi",
          "code", "br", "wbr", "tspan");
  private static final Set<String> VOID = Set.of("br", "wbr");
  private static final Set<String> LEFT_ALONE = Set.of("script", "style", "textarea", "pre");
  private static final Pattern TAG =
      Pattern.compile(
          "<!--.*?-->|<!?/?[a-zA-Z][^\"'>]*(?:(?:\"[^\"]*\"|'[^']*')[^\"'>]*)*>", Pattern.DOTALL);
  private static final Pattern NAME = Pattern.compile("</?([a-zA-Z][a-zA-Z0-9]*)");
  private static final Pattern SPACE = Pattern.compile("\\s+");
  private static final Pattern SAID =
      Pattern.compile(
          "(?<=\\s)(placeholder|aria-label|title|alt|data-label|data-say-[a-z]+)=\"([^\"]*)\"");
  private static final Pattern BUTTON = Pattern.compile("<input\\b[^>]*type=\"submit\"");
  private static final Pattern VALUE = Pattern.compile("(?<=\\s)value=\"([^\"]*)\"");

  private final Phrasebook book;
  private final Language language;
  private final Consumer<String> unknown;

  private Interpreter(Language language, Phrasebook book, Consumer<String> unknown) {
    this.language = language;
    this.book = book;
    this.unknown = unknown;
  }

  /** Puts a page or a part of one into this language. */
  public static String page(Language language, String html) {
    if (language == Language.ENGLISH) {
      return html;
    }
    return new Interpreter(language, Phrasebook.of(language), phrase -> {}).translate(html);
  }

  /** As {@link #page}, with this book; tells of each phrase that the book does not have. */
  static String page(Language language, Phrasebook book, String html, Consumer<String> unknown) {
    return new Interpreter(language, book, unknown).translate(html);
  }

  private String translate(String html) {
    StringBuilder out = new StringBuilder(html.length() + html.length() / 4);
    Matcher tag = TAG.matcher(html);
    List<String> run = new ArrayList<>();
    int from = 0;
    while (tag.find(from)) {
      if (tag.start() > from) {
        run.add(html.substring(from, tag.start()));
      }
      String raw = tag.group();
      String name = nameOf(raw);
      int next = tag.end();
      if (leftAlone(raw, name)) {
        next = endOf(html, name, tag.end());
        String kept = html.substring(tag.start(), next);
        if (INLINE.contains(name)) {
          run.add(kept);
        } else {
          flush(run, out);
          out.append(kept);
        }
      } else if (INLINE.contains(name)) {
        run.add(attributes(raw, name));
      } else {
        flush(run, out);
        out.append(attributes(raw, name));
      }
      from = next;
    }
    run.add(html.substring(from));
    flush(run, out);
    return out.toString();
  }

  private static String nameOf(String tag) {
    Matcher name = NAME.matcher(tag);
    return name.lookingAt() ? name.group(1).toLowerCase(Locale.ROOT) : "";
  }

  private static boolean leftAlone(String tag, String name) {
    return !tag.startsWith("</")
        && !tag.endsWith("/>")
        && (LEFT_ALONE.contains(name) || tag.contains("translate=\"no\""));
  }

  /** The place behind the closing tag of an element whose content begins at {@code from}. */
  private static int endOf(String html, String name, int from) {
    int depth = 1;
    Matcher tag = TAG.matcher(html);
    int at = from;
    while (tag.find(at)) {
      at = tag.end();
      if (nameOf(tag.group()).equals(name) && !tag.group().endsWith("/>")) {
        depth += tag.group().startsWith("</") ? -1 : 1;
        if (depth == 0) {
          return at;
        }
      }
    }
    return html.length();
  }

  private static boolean isTag(String piece) {
    return piece.startsWith("<");
  }

  private void flush(List<String> run, StringBuilder out) {
    boolean marked = run.stream().anyMatch(Interpreter::isTag);
    String whole = marked ? wholeRun(run) : null;
    if (whole != null) {
      out.append(whole);
    } else {
      for (String piece : run) {
        out.append(isTag(piece) ? piece : text(piece));
      }
    }
    run.clear();
  }

  /** The run as one phrase with its markup numbered; null when the book does not have it. */
  private @Nullable String wholeRun(List<String> run) {
    StringBuilder phrase = new StringBuilder();
    List<String> tags = new ArrayList<>();
    List<Integer> open = new ArrayList<>();
    List<String> closing = new ArrayList<>();
    for (String piece : run) {
      if (!isTag(piece)) {
        phrase.append(piece);
      } else if (piece.startsWith("</")) {
        if (open.isEmpty()) {
          return null;
        }
        int number = open.remove(open.size() - 1);
        closing.set(number - 1, piece);
        phrase.append("</").append(number).append('>');
      } else {
        tags.add(piece);
        closing.add("");
        boolean alone =
            VOID.contains(nameOf(piece)) || piece.endsWith("/>") || piece.indexOf("</") > 0;
        phrase.append('<').append(tags.size()).append(alone ? "/>" : ">");
        if (!alone) {
          open.add(tags.size());
        }
      }
    }
    if (!open.isEmpty() || tags.size() > 9) {
      return null;
    }
    String tidy = SPACE.matcher(phrase).replaceAll(" ").strip();
    if (Phrasebook.needsNoWords(tidy)) {
      return null;
    }
    String found = book.find(tidy).orElse(null);
    if (found == null) {
      return null;
    }
    for (int i = 0; i < tags.size(); i++) {
      int number = i + 1;
      found =
          found
              .replace("<" + number + "/>", tags.get(i))
              .replace("<" + number + ">", tags.get(i))
              .replace("</" + number + ">", closing.get(i));
    }
    return padded(phrase.toString(), found);
  }

  private String text(String raw) {
    String tidy = SPACE.matcher(raw).replaceAll(" ").strip();
    if (tidy.isEmpty() || Phrasebook.needsNoWords(tidy)) {
      return raw;
    }
    return padded(raw, said(tidy));
  }

  private String said(String phrase) {
    return book.find(phrase)
        .orElseGet(
            () -> {
              unknown.accept(phrase);
              return phrase;
            });
  }

  /** Keeps the space around a text, which divides it from its neighbours. */
  private static String padded(String raw, String text) {
    String before = raw.isEmpty() || !Character.isWhitespace(raw.charAt(0)) ? "" : " ";
    boolean after = !raw.isEmpty() && Character.isWhitespace(raw.charAt(raw.length() - 1));
    return before + text + (after ? " " : "");
  }

  private String attributes(String tag, String name) {
    if (name.equals("html")) {
      return tag.replaceFirst(
          "lang=\"en\"", "lang=\"" + language.tag() + "\" dir=\"" + language.direction() + "\"");
    }
    if (tag.indexOf('=') < 0) {
      return tag;
    }
    String said =
        SAID.matcher(tag)
            .replaceAll(
                r -> Matcher.quoteReplacement(r.group(1) + "=\"" + value(r.group(2)) + "\""));
    if (BUTTON.matcher(said).lookingAt()) {
      said =
          VALUE
              .matcher(said)
              .replaceFirst(r -> Matcher.quoteReplacement("value=\"" + value(r.group(1)) + "\""));
    }
    return said;
  }

  private String value(String escaped) {
    String tidy =
        SPACE.matcher(escaped.replace("&#39;", "'").replace("&#34;", "\"")).replaceAll(" ").strip();
    if (tidy.isEmpty() || Phrasebook.needsNoWords(tidy)) {
      return escaped;
    }
    return said(tidy).replace("\"", "&#34;");
  }
}

package pourwright.page.words;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * English phrases and what they are in another language. A phrase may have holes, {@code {0}} to
 * {@code {9}}, for numbers, names and whatever else changes; {@code <1>…</1>} stand for markup
 * inside it. The files are {@code words/de.json} and its sisters: one JSON object, English on the
 * left.
 */
public final class Phrasebook {
  private static final int REMEMBERED_MAX = 4_000;
  private static final int DEPTH_MAX = 3;
  private static final Pattern HOLE = Pattern.compile("\\{(\\d)}");
  private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");
  private static final Pattern MARKUP = Pattern.compile("</?\\d/?>");

  /** What needs no translating: symbols of units, currencies, hazards and our own name. */
  private static final Pattern NEUTRAL =
      Pattern.compile(
          "(?<!\\p{L})(?:kg|mg|µg|ml|cl|mm|cm|fl|oz|lb|lbs|gal|in|ft|min|°C|°F|EUR|USD|GBP|CHF|CAS|PDF"
              + "|CSV|XLSX|SVG|PNG|QR|STOP|UFI|EUH|GHS|UN|EU|US|EN|ISO|ASTM|pH|Pourwright|F1)(?!\\p{L})");

  private static final Map<Language, Phrasebook> BOOKS = new EnumMap<>(Language.class);

  private final Map<String, String> exact = new HashMap<>();
  private final Map<String, List<Holed>> byWord = new HashMap<>();
  private final Map<String, Optional<String>> remembered =
      new LinkedHashMap<>(256, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Optional<String>> eldest) {
          return size() > REMEMBERED_MAX;
        }
      };

  /** A phrase with holes, how much of it is fixed, and its translation. */
  private record Holed(Pattern pattern, List<Integer> holes, int fixed, String translation) {}

  private Phrasebook(Map<String, String> phrases) {
    phrases.forEach(this::put);
    byWord.values().forEach(l -> l.sort(Comparator.comparingInt(Holed::fixed).reversed()));
  }

  /** The book of a language, read once; an empty one for English. */
  public static Phrasebook of(Language language) {
    synchronized (BOOKS) {
      return BOOKS.computeIfAbsent(language, Phrasebook::open);
    }
  }

  private static Phrasebook open(Language language) {
    if (language == Language.ENGLISH) {
      return new Phrasebook(Map.of());
    }
    if (!language.pseudo()) {
      return new Phrasebook(phrases(language));
    }
    Map<String, String> shown = new LinkedHashMap<>();
    phrases(Language.GERMAN).keySet().forEach(phrase -> shown.put(phrase, Accents.on(phrase)));
    return new Phrasebook(shown);
  }

  /** A book of these phrases. */
  static Phrasebook with(Map<String, String> phrases) {
    return new Phrasebook(phrases);
  }

  /** The phrases as they stand in the file of a language. */
  static Map<String, String> phrases(Language language) {
    String name = "/words/" + language.tag() + ".json";
    try (InputStream in = Phrasebook.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("no " + name);
      }
      return new ObjectMapper()
          .readValue(in, new TypeReference<LinkedHashMap<String, String>>() {});
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void put(String english, String other) {
    String key = english.replace("&", "&amp;");
    String translation = other.replace("&", "&amp;");
    if (!HOLE.matcher(key).find()) {
      exact.put(key, translation);
      return;
    }
    StringBuilder regex = new StringBuilder();
    List<Integer> holes = new ArrayList<>();
    Matcher hole = HOLE.matcher(key);
    int from = 0;
    while (hole.find()) {
      regex.append(Pattern.quote(key.substring(from, hole.start()))).append("(.+?)");
      holes.add(Integer.valueOf(hole.group(1)));
      from = hole.end();
    }
    regex.append(Pattern.quote(key.substring(from)));
    String fixed = HOLE.matcher(key).replaceAll(" ");
    Holed holed =
        new Holed(
            Pattern.compile(regex.toString(), Pattern.DOTALL), holes, fixed.length(), translation);
    byWord.computeIfAbsent(longestWord(fixed), w -> new ArrayList<>()).add(holed);
  }

  private static String longestWord(String text) {
    Matcher word = WORD.matcher(MARKUP.matcher(text).replaceAll(" "));
    String longest = "";
    while (word.find()) {
      if (word.group().length() > longest.length()) {
        longest = word.group();
      }
    }
    return longest;
  }

  /**
   * A phrase in this language; nothing when the book does not have it. Numbers with their units
   * alone come back as they are.
   */
  public Optional<String> find(String phrase) {
    synchronized (remembered) {
      return remembered.computeIfAbsent(phrase, p -> search(p, 0));
    }
  }

  private Optional<String> search(String phrase, int depth) {
    if (needsNoWords(phrase)) {
      return Optional.of(phrase);
    }
    String whole = exact.get(phrase);
    if (whole != null) {
      return Optional.of(whole);
    }
    for (Holed holed : candidates(phrase)) {
      Matcher match = holed.pattern().matcher(phrase);
      if (match.matches()) {
        return Optional.of(filled(holed, match, depth));
      }
    }
    return Optional.empty();
  }

  private List<Holed> candidates(String phrase) {
    List<Holed> found = new ArrayList<>();
    Matcher word = WORD.matcher(phrase);
    Set<String> seen = new java.util.HashSet<>();
    while (word.find()) {
      if (seen.add(word.group())) {
        found.addAll(byWord.getOrDefault(word.group(), List.of()));
      }
    }
    found.sort(Comparator.comparingInt(Holed::fixed).reversed());
    return found;
  }

  /** What fills a hole may be a phrase of its own; what is none stays as it is. */
  private String filled(Holed holed, Matcher match, int depth) {
    Map<Integer, String> fillings = new HashMap<>();
    for (int i = 0; i < holed.holes().size(); i++) {
      String raw = match.group(i + 1);
      String filling = depth < DEPTH_MAX ? search(raw, depth + 1).orElse(raw) : raw;
      fillings.put(holed.holes().get(i), filling);
    }
    return HOLE.matcher(holed.translation())
        .replaceAll(
            r ->
                Matcher.quoteReplacement(
                    fillings.getOrDefault(Integer.valueOf(r.group(1)), r.group())));
  }

  /** Whether nothing in this text is a word: numbers, signs, symbols of units, single letters. */
  static boolean needsNoWords(String text) {
    String rest = MARKUP.matcher(NEUTRAL.matcher(text).replaceAll(" ")).replaceAll(" ");
    return !WORD.matcher(rest.replaceAll("&[a-z]+;", " ")).find();
  }
}

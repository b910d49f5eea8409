package pourwright.page.words;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.DayOfWeek;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a page says in English that the books of phrases do not have. What stands in the studio's
 * books was written by somebody and needs no translating; so the test reads them and takes it out.
 */
public final class Unsaid {
  private static final int SHORTEST = 2;
  private final List<String> written;
  private final ObjectMapper json = new ObjectMapper();

  private Unsaid(Set<String> written) {
    this.written = new ArrayList<>(written);
    this.written.sort(Comparator.comparingInt(String::length).reversed());
  }

  /** For the studio whose SQLite file lies here. */
  public static Unsaid in(Path studioDb) {
    Set<String> words = new TreeSet<>();
    for (Month month : Month.values()) {
      words.add(month.getDisplayName(TextStyle.SHORT, Locale.UK));
      words.add(month.getDisplayName(TextStyle.FULL, Locale.UK));
    }
    for (DayOfWeek day : DayOfWeek.values()) {
      words.add(day.getDisplayName(TextStyle.SHORT, Locale.UK));
      words.add(day.getDisplayName(TextStyle.FULL, Locale.UK));
    }
    Unsaid unsaid = new Unsaid(Set.of());
    try (Connection db = DriverManager.getConnection("jdbc:sqlite:" + studioDb);
        Statement ask = db.createStatement()) {
      List<String> columns = new ArrayList<>();
      try (ResultSet found =
          ask.executeQuery(
              "SELECT m.name, c.name FROM sqlite_schema m, pragma_table_info(m.name) c WHERE m.type ="
                  + " 'table' AND c.type = 'TEXT'")) {
        while (found.next()) {
          columns.add(
              "SELECT DISTINCT \"" + found.getString(2) + "\" FROM \"" + found.getString(1) + "\"");
        }
      }
      for (String column : columns) {
        try (ResultSet values = ask.executeQuery(column)) {
          while (values.next()) {
            unsaid.take(values.getString(1), words);
          }
        }
      }
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
    return new Unsaid(words);
  }

  private void take(@org.jspecify.annotations.Nullable String value, Set<String> words) {
    if (value == null) {
      return;
    }
    if (value.startsWith("{") || value.startsWith("[")) {
      try {
        leaves(json.readTree(value), words);
        return;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    keep(value, words);
  }

  private static void leaves(JsonNode node, Set<String> words) {
    if (node.isTextual()) {
      keep(node.textValue(), words);
    }
    node.elements().forEachRemaining(child -> leaves(child, words));
  }

  private static void keep(String value, Set<String> words) {
    String tidy = value.replaceAll("\\s+", " ").strip();
    if (tidy.length() >= SHORTEST) {
      words.add(tidy);
    }
  }

  /** The English phrases of a page that no book has and nobody wrote. */
  public Set<String> on(String html) {
    Set<String> unknown = new TreeSet<>();
    Interpreter.page(Language.PSEUDO, Phrasebook.of(Language.PSEUDO), html, unknown::add);
    unknown.removeIf(phrase -> Phrasebook.needsNoWords(withoutWritten(phrase)));
    return unknown;
  }

  /** A phrase as it might stand in a book: what was written and numbers made holes. */
  public String asPhrase(String said) {
    String rest = said.replace("&amp;", "&");
    for (String word : written) {
      if (word.length() > 3 && rest.contains(word)) {
        rest = rest.replace(word, "\uE000");
      }
    }
    rest = rest.replaceAll("[-−+]?\\d[\\d.,:/]*\\d|\\d", "\uE000");
    int hole = 0;
    StringBuilder phrase = new StringBuilder();
    for (char c : rest.toCharArray()) {
      phrase.append(c == '\uE000' ? "{" + hole++ + "}" : String.valueOf(c));
    }
    return phrase.toString();
  }

  private String withoutWritten(String phrase) {
    String rest = phrase.replace("&amp;", "&");
    for (String word : written) {
      if (rest.contains(word)) {
        rest = rest.replace(word, " ");
      }
    }
    // marks are written by the studio and kept as numbers
    return rest.replaceAll("\\b(?=[A-Z]*\\d)[A-Z0-9]{3,10}\\b", " ");
  }
}

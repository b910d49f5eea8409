package pourwright.order;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text with delimiters as a table; the delimiter is what makes a header of the wanted columns. */
final class CsvTable {
  static final int ROWS_MAX = 200_000;
  private static final int FIELD_MAX = 1_000_000;
  private static final Map<Character, String> DELIMITERS = delimiters();
  private static final Pattern SAID = Pattern.compile("(?i)\\A\"?sep=(.)\"?\\r?(?:\\n|\\z)");

  private CsvTable() {}

  private static Map<Character, String> delimiters() {
    Map<Character, String> known = new LinkedHashMap<>();
    known.put(',', "comma");
    known.put(';', "semicolon");
    known.put('\t', "tab");
    known.put('|', "bar");
    return known;
  }

  /**
   * Reads the text.
   *
   * @param score how many wanted columns a table's header has; 0 when it has no header
   */
  static Table read(Decoding decoded, ImportChoices choices, ToIntFunction<List<Table.Row>> score)
      throws Stop {
    String text = decoded.text();
    refuseOtherFormats(text);
    Matcher said = SAID.matcher(text);
    Character delimiter = choices.delimiter();
    long skipped = 0;
    if (said.find()) {
      delimiter = delimiter == null ? Character.valueOf(said.group(1).charAt(0)) : delimiter;
      text = text.substring(said.end());
      skipped = 1;
    }
    if (delimiter != null) {
      return table(decoded, delimiter, rows(text, delimiter, skipped));
    }
    return detected(decoded, text, skipped, score);
  }

  private static Table detected(
      Decoding decoded, String text, long skipped, ToIntFunction<List<Table.Row>> score)
      throws Stop {
    Map<Character, List<Table.Row>> best = new LinkedHashMap<>();
    int bestScore = 0;
    Stop first = null;
    for (char candidate : DELIMITERS.keySet()) {
      List<Table.Row> rows;
      try {
        rows = rows(text, candidate, skipped);
      } catch (Stop broken) {
        first = first == null && headerHas(text, candidate) ? broken : first;
        continue;
      }
      int points = score.applyAsInt(rows);
      if (points > bestScore) {
        best.clear();
        bestScore = points;
      }
      if (points == bestScore && points > 0) {
        best.put(candidate, rows);
      }
    }
    if (first != null && bestScore < 2) {
      throw first;
    }
    if (best.size() > 1 || best.isEmpty()) {
      return undecided(decoded, text, skipped, best);
    }
    var only = best.entrySet().iterator().next();
    return table(decoded, only.getKey(), only.getValue());
  }

  private static boolean headerHas(String text, char candidate) {
    int end = text.indexOf('\n');
    return (end < 0 ? text : text.substring(0, end)).indexOf(candidate) >= 0;
  }

  /** No header found, or found alike by several: a person says, unless only one cuts the lines. */
  private static Table undecided(
      Decoding decoded, String text, long skipped, Map<Character, List<Table.Row>> best)
      throws Stop {
    List<Character> cutting = new ArrayList<>();
    for (char candidate : best.isEmpty() ? DELIMITERS.keySet() : best.keySet()) {
      if (headerHas(text, candidate)) {
        cutting.add(candidate);
      }
    }
    if (cutting.size() == 1) {
      return table(decoded, cutting.get(0), rows(text, cutting.get(0), skipped));
    }
    if (cutting.isEmpty()) {
      throw Stop.unreadable(
          "no line of it looks like a table with columns",
          "export the orders as CSV with one line of column names");
    }
    List<String> answers = cutting.stream().map(c -> String.valueOf(DELIMITERS.get(c))).toList();
    throw Stop.ambiguous(
        new OrderImport.Question(
            "delimiter", "the columns could be cut at several characters", answers));
  }

  private static Table table(Decoding decoded, char delimiter, List<Table.Row> rows) {
    String words = DELIMITERS.getOrDefault(delimiter, String.valueOf(delimiter));
    return new Table("CSV", decoded.encoding(), words, rows);
  }

  private static void refuseOtherFormats(String text) throws Stop {
    String head = Blanks.strip(text.substring(0, Math.min(400, text.length())));
    if (head.isEmpty()) {
      throw Stop.unreadable("the file is empty", "export the orders again");
    }
    String lower = head.toLowerCase(java.util.Locale.ROOT);
    if (lower.startsWith("<!doctype")
        || lower.startsWith("<html")
        || lower.startsWith("<?xml")
        || lower.startsWith("<table")) {
      throw Stop.unreadable("this is a web page or XML, not a table", "export it as CSV or XLSX");
    }
    if (head.startsWith("{") || head.startsWith("[{") || head.startsWith("%PDF")) {
      throw Stop.unreadable("this is not a table", "export the orders as CSV or XLSX");
    }
  }

  private static List<Table.Row> rows(String text, char delimiter, long skipped) throws Stop {
    List<Table.Row> rows = new ArrayList<>();
    long last = skipped;
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(delimiter)
            .allowUnclosedQuote(false)
            .trimWhitespacesAroundQuotes(true)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .maxBufferSize(8 * FIELD_MAX)
            .ofCsvRecord(text)) {
      for (CsvRecord record : reader) {
        last = record.getStartingLineNumber() + skipped;
        List<Cell> cells = new ArrayList<>(record.getFieldCount());
        for (String field : record.getFields()) {
          if (field.length() > FIELD_MAX) {
            throw Stop.bad(null, last, "one cell is longer than a million letters");
          }
          cells.add(new Cell.Text(field));
        }
        Table.Row row = new Table.Row(last, cells);
        if (!row.isBlank()) {
          rows.add(row);
        }
        if (rows.size() > ROWS_MAX) {
          throw Stop.unreadable("more than " + ROWS_MAX + " rows", "split the file");
        }
      }
    } catch (CsvParseException e) {
      throw Stop.bad(
          null,
          last + 1,
          "from here on the quotation marks do not match up; look for a quotation mark that is"
              + " not closed");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return rows;
  }
}

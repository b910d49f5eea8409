package pourwright.work;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pourwright.quantity.OutOfRange;

/**
 * A small table from a spreadsheet: a head and rows below it. The delimiter is the one that makes
 * the widest head; text is UTF-8, else what western spreadsheets write.
 *
 * @param head column names as they stand
 * @param rows cells by column name; the file's line is the row's place plus two
 */
public record CsvRows(List<String> head, List<Map<String, String>> rows) {
  private static final int ROWS_MAX = 5000;

  /** Keeps its own copies. */
  public CsvRows {
    head = List.copyOf(head);
    rows = List.copyOf(rows);
  }

  /**
   * Reads a file.
   *
   * @throws OutOfRange when it is no such table
   */
  public static CsvRows read(byte[] bytes) {
    String text = decoded(bytes);
    String first = text.lines().findFirst().orElse("");
    char delimiter = ',';
    for (char candidate : new char[] {';', '\t'}) {
      if (count(first, candidate) > count(first, delimiter)) {
        delimiter = candidate;
      }
    }
    List<CsvRecord> records;
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(delimiter)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(text)) {
      records = reader.stream().limit(ROWS_MAX + 2L).toList();
    } catch (CsvParseException | java.io.IOException e) {
      throw new OutOfRange(
          "file", "it is no table: " + e.getMessage(), "save it as CSV from the spreadsheet");
    }
    if (records.isEmpty()) {
      throw new OutOfRange("file", "the file is empty", "give a head and lines below it");
    }
    if (records.size() > ROWS_MAX + 1) {
      throw new OutOfRange("file", "it has more than " + ROWS_MAX + " lines", "split it");
    }
    List<String> head = records.get(0).getFields().stream().map(String::strip).toList();
    List<Map<String, String>> rows = new ArrayList<>();
    for (CsvRecord record : records.subList(1, records.size())) {
      Map<String, String> row = new LinkedHashMap<>();
      for (int i = 0; i < Math.min(head.size(), record.getFieldCount()); i++) {
        row.put(head.get(i), record.getField(i).strip());
      }
      if (row.values().stream().anyMatch(v -> !v.isEmpty())) {
        rows.add(row);
      }
    }
    return new CsvRows(head, rows);
  }

  private static long count(String text, char c) {
    return text.chars().filter(x -> x == c).count();
  }

  private static String decoded(byte[] bytes) {
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      text = new String(bytes, Charset.forName("windows-1252"));
    }
    if (text.indexOf('\0') >= 0) {
      throw new OutOfRange(
          "file", "it is no text", "save it as CSV from the spreadsheet, not as a workbook");
    }
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /**
   * Which column each field is taken from: what was said, else the column whose name is one of the
   * usual ones.
   *
   * @param usual usual names by field, lower case
   * @param said column by field; an empty text leaves the field out
   */
  public Map<String, String> mapping(Map<String, List<String>> usual, Map<String, String> said) {
    Map<String, String> mapping = new LinkedHashMap<>();
    usual.forEach(
        (field, names) -> {
          if (said.containsKey(field)) {
            String column = said.getOrDefault(field, "");
            if (head.contains(column)) {
              mapping.put(field, column);
            }
            return;
          }
          head.stream()
              .filter(h -> names.contains(h.toLowerCase(Locale.ROOT)))
              .findFirst()
              .ifPresent(h -> mapping.put(field, h));
        });
    return mapping;
  }

  /** The rows by field instead of by column. */
  public List<Map<String, String>> byField(Map<String, String> mapping) {
    List<Map<String, String>> all = new ArrayList<>();
    for (Map<String, String> row : rows) {
      Map<String, String> fields = new LinkedHashMap<>();
      mapping.forEach((field, column) -> fields.put(field, row.getOrDefault(column, "")));
      all.add(fields);
    }
    return all;
  }
}

package pourwright.hazard;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pourwright.quantity.OutOfRange;

/**
 * A composition as a table: its columns are mapped to what {@link SheetReader} reads, and what
 * comes out is text for it, so that a table meets the same doubts as a pasted sheet. No number is
 * made here; every one stands in a cell.
 *
 * @param header names of the columns
 * @param rows cells, as many as columns
 */
public record SheetTable(List<String> header, List<List<String>> rows) {
  private static final int ROWS_MAX = 1_000;
  private static final String CAS = "[1-9][0-9]{1,6}-[0-9]{2}-[0-9]";

  /** What a column can hold. */
  public enum Column {
    /** The substance's name. */
    NAME("name", "name|substance|ingredient|component|chemical|bezeichnung|stoff|nom|nombre"),
    /** Its CAS number. */
    CAS("CAS number", "cas.*"),
    /** Its share, one number or a range. */
    SHARE("share or range, %", "share|conc.*|percent.*|%|w/w.*|content|anteil|gehalt"),
    /** Lower end of its share. */
    LOW("lower end, %", "low.*|from|min.*|von"),
    /** Upper end of its share. */
    HIGH("upper end, %", "high.*|upper.*|to|max.*|bis"),
    /** Classes and statements. */
    CLASSES(
        "classes and H statements", "class.*|hazard.*|h[- ]?(?:codes?|statements?|phrases?)|ghs"),
    /** Specific limits. */
    LIMITS("specific limits", "scl|specific.*|limits?"),
    /** M-factor, acute. */
    M_ACUTE("M-factor acute", "m(?:[- ]?factor)?[ (]*acute.*|m acute"),
    /** M-factor, chronic. */
    M_CHRONIC("M-factor chronic", "m(?:[- ]?factor)?[ (]*chronic.*|m chronic"),
    /** Acute toxicity estimate by mouth. */
    ORAL("ATE by mouth, mg/kg", "(?:ate|ld50).*oral.*|oral.*"),
    /** Acute toxicity estimate through the skin. */
    DERMAL("ATE through the skin, mg/kg", "(?:ate|ld50).*dermal.*|dermal.*");

    private final String words;
    private final String guess;

    Column(String words, String guess) {
      this.words = words;
      this.guess = guess;
    }

    /** What it holds, for a person. */
    public String words() {
      return words;
    }
  }

  /** Copies. */
  public SheetTable {
    header = List.copyOf(header);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * Reads comma, semicolon or tab separated text whose first line names the columns.
   *
   * @throws OutOfRange when it is no table
   */
  public static SheetTable read(String text) {
    String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
    String first = plain.lines().findFirst().orElse("");
    char best = ',';
    for (char candidate : new char[] {';', '\t', '|'}) {
      best = count(first, candidate) > count(first, best) ? candidate : best;
    }
    List<List<String>> all = cells(plain, best);
    if (all.isEmpty() || all.get(0).size() < 2) {
      throw new OutOfRange(
          "table", "no line with several columns was found", "the first line names the columns");
    }
    if (all.size() > ROWS_MAX) {
      throw new OutOfRange("table", "the table has more than " + ROWS_MAX + " rows", "cut it");
    }
    int width = all.get(0).size();
    List<List<String>> rows = new ArrayList<>();
    for (List<String> row : all.subList(1, all.size())) {
      List<String> cells = new ArrayList<>(row.subList(0, Math.min(width, row.size())));
      while (cells.size() < width) {
        cells.add("");
      }
      if (cells.stream().anyMatch(c -> !c.isBlank())) {
        rows.add(cells);
      }
    }
    return new SheetTable(all.get(0), rows);
  }

  private static long count(String line, char c) {
    return line.chars().filter(x -> x == c).count();
  }

  private static List<List<String>> cells(String text, char separator) {
    List<List<String>> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder().fieldSeparator(separator).allowUnclosedQuote(false).ofCsvRecord(text)) {
      for (CsvRecord record : reader) {
        rows.add(record.getFields().stream().map(SheetTable::tidy).toList());
      }
    } catch (CsvParseException e) {
      throw new OutOfRange(
          "table", "the quotation marks of the table do not match up", "look for one left open");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return rows;
  }

  private static String tidy(String cell) {
    return cell.replaceAll("\\s+", " ").strip();
  }

  /** Which column is probably what, by the names in the first line; columns count from 0. */
  public Map<Column, Integer> guess() {
    Map<Column, Integer> guessed = new EnumMap<>(Column.class);
    for (int i = 0; i < header.size(); i++) {
      String name = header.get(i).toLowerCase(Locale.ROOT).strip();
      for (Column column : Column.values()) {
        if (!guessed.containsKey(column)
            && !guessed.containsValue(i)
            && name.matches("(?:" + column.guess + ")\\W*")) {
          guessed.put(column, i);
        }
      }
    }
    return guessed;
  }

  /**
   * The rows as text for {@link SheetReader}, one substance a line.
   *
   * @param mapped which column holds what, from 0
   * @throws OutOfRange when neither name nor CAS number is mapped, or no share
   */
  public String text(Map<Column, Integer> mapped) {
    boolean named = mapped.containsKey(Column.NAME) || mapped.containsKey(Column.CAS);
    boolean shared = mapped.containsKey(Column.SHARE) || mapped.containsKey(Column.HIGH);
    if (!named || !shared) {
      throw new OutOfRange(
          "columns",
          "a composition needs a name or a CAS number, and a share",
          "say which columns hold them");
    }
    return String.join("\n", rows.stream().map(row -> line(row, mapped)).toList());
  }

  /**
   * One substance, field by field, as a line of text for {@link SheetReader}.
   *
   * @param fields what was typed, by column
   * @throws OutOfRange when neither name nor CAS number, or no share was typed
   */
  public static String line(Map<Column, String> fields) {
    Map<Column, Integer> mapped = new EnumMap<>(Column.class);
    List<String> cells = new ArrayList<>();
    for (Column column : Column.values()) {
      String cell = tidy(fields.getOrDefault(column, ""));
      if (!cell.isEmpty()) {
        mapped.put(column, cells.size());
        cells.add(cell);
      }
    }
    return new SheetTable(cells, List.of(cells)).text(mapped);
  }

  private static String line(List<String> row, Map<Column, Integer> mapped) {
    Map<Column, String> cell = new EnumMap<>(Column.class);
    mapped.forEach((column, at) -> cell.put(column, at < row.size() ? row.get(at) : ""));
    String cas = cell.getOrDefault(Column.CAS, "");
    List<String> parts = new ArrayList<>();
    parts.add(cell.getOrDefault(Column.NAME, ""));
    parts.add(cas.matches(CAS) ? cas : "no CAS");
    parts.add(share(cell));
    parts.add(cell.getOrDefault(Column.CLASSES, ""));
    String limits = cell.getOrDefault(Column.LIMITS, "");
    parts.add(limits.isEmpty() ? "" : ", " + limits);
    parts.add(with(", M (acute) = ", cell.getOrDefault(Column.M_ACUTE, ""), ""));
    parts.add(with(", M (chronic) = ", cell.getOrDefault(Column.M_CHRONIC, ""), ""));
    parts.add(with(", ATE oral ", cell.getOrDefault(Column.ORAL, ""), " mg/kg"));
    parts.add(with(", ATE dermal ", cell.getOrDefault(Column.DERMAL, ""), " mg/kg"));
    if (!cas.isEmpty() && !cas.matches(CAS)) {
      parts.add("; not a CAS number: " + cas.replaceAll("[0-9]", "#"));
    }
    return tidy(String.join(" ", parts)).replace(" ,", ",");
  }

  private static String share(Map<Column, String> cell) {
    String low = cell.getOrDefault(Column.LOW, "").replace("%", "").strip();
    String high = cell.getOrDefault(Column.HIGH, "").replace("%", "").strip();
    String share = cell.getOrDefault(Column.SHARE, "");
    if (!high.isEmpty()) {
      return low.isEmpty() ? high + " %" : low + " - " + high + " %";
    }
    return share.isEmpty() || share.contains("%") ? share : share + " %";
  }

  private static String with(String before, String cell, String after) {
    return cell.isEmpty() ? "" : before + cell + (cell.contains("mg/kg") ? "" : after);
  }
}

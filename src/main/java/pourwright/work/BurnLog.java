package pourwright.work;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a scale or a thermometer logged while a candle burnt, read from CSV: a column of times and
 * one or more of mass or temperatures. Times are minutes since lighting, seconds under a head that
 * says so, or date and time as loggers write them. A log is read whole or not at all; what was
 * logged before lighting or after putting out is left aside, and of several lines in a minute the
 * first is kept.
 *
 * @param looks what was read, in the order of the file
 * @param aside lines that lie outside the cycle
 * @param complaints sentences about lines that cannot be read, each with its number
 */
public record BurnLog(List<BurnTest.Look> looks, int aside, List<String> complaints) {
  private static final Map<String, List<String>> HEADS = heads();
  private static final String NUMBER = "-?\\d{1,7}([.,]\\d{1,6})?";
  private static final int LINES_MAX = 100_000;
  private static final int COMPLAINTS_MAX = 5;
  private static final String NOTE = "from a log";

  /** Copies the lists. */
  public BurnLog {
    looks = List.copyOf(looks);
    complaints = List.copyOf(complaints);
  }

  private static Map<String, List<String>> heads() {
    Map<String, List<String>> heads = new LinkedHashMap<>();
    heads.put("minute", List.of("minute", "minutes", "min", "time", "date", "datetime"));
    heads.put("second", List.of("second", "seconds", "sec", "s", "time_s"));
    heads.put("mass_g", List.of("mass_g", "mass", "weight", "g", "grams"));
    heads.put("wall_c", List.of("wall_c", "wall", "temperature", "temp", "c", "°c"));
    heads.put("base_c", List.of("base_c", "base", "underside"));
    return heads;
  }

  /**
   * The cycle that was logged.
   *
   * @param lit when it was lit
   * @param out when it was put out, null while it burns
   * @param zone in which the logger's clock runs
   */
  public record Burnt(Instant lit, @Nullable Instant out, ZoneId zone) {}

  /**
   * Reads a log.
   *
   * @param bytes the file, or pasted lines
   * @param what mass_g, wall_c or base_c: what the second column is where no head says it
   */
  public static BurnLog read(byte[] bytes, String what, Burnt burnt) {
    String text = decoded(bytes);
    if (text.indexOf('\0') >= 0) {
      return new BurnLog(List.of(), 0, List.of("It is no text: save it as CSV."));
    }
    Reader reader = new Reader(what, burnt);
    try (CsvReader<CsvRecord> csv =
        CsvReader.builder()
            .fieldSeparator(delimiter(text))
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(text)) {
      csv.stream().limit(LINES_MAX).forEach(reader::take);
    } catch (CsvParseException | java.io.IOException e) {
      return new BurnLog(List.of(), 0, List.of("It is no table: " + e.getMessage() + "."));
    }
    if (reader.looks.isEmpty() && reader.complaints.isEmpty()) {
      reader.complaints.add(
          reader.aside > 0
              ? "Every line lies before it was lit or after it was out."
              : "No line holds a time and a value.");
    }
    return new BurnLog(reader.looks, reader.aside, reader.complaints);
  }

  private static String decoded(byte[] bytes) {
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      text = new String(bytes, Charset.forName("windows-1252"));
    }
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /** A semicolon or a tabulator leaves the comma to numbers; without any of them a space parts. */
  private static char delimiter(String text) {
    for (char candidate : new char[] {';', '\t', ','}) {
      if (text.indexOf(candidate) >= 0) {
        return candidate;
      }
    }
    return ' ';
  }

  private static final class Reader {
    private final Burnt burnt;
    private final List<BurnTest.Look> looks = new ArrayList<>();
    private final List<String> complaints = new ArrayList<>();
    private final Set<Long> minutes = new LinkedHashSet<>();
    private Map<String, Integer> columns;
    private boolean first = true;
    private int aside;

    Reader(String what, Burnt burnt) {
      this.burnt = burnt;
      this.columns = Map.of("minute", 0, what, 1);
    }

    void take(CsvRecord line) {
      List<String> cells = line.getFields().stream().map(String::strip).toList();
      if (cells.stream().allMatch(String::isEmpty) || complaints.size() >= COMPLAINTS_MAX) {
        return;
      }
      boolean head = first && minute(cells.get(0), 1).isEmpty();
      first = false;
      if (head) {
        head(cells);
        return;
      }
      Optional<Double> minute =
          columns.containsKey("second")
              ? minute(cell(cells, "second"), 1.0 / 60)
              : minute(cell(cells, "minute"), 1);
      Optional<BurnTest.Look> look = minute.flatMap(m -> look(m, cells));
      if (look.isEmpty()) {
        complaints.add(
            "Line "
                + line.getStartingLineNumber()
                + " is not a time and a value: "
                + String.join(" ", cells));
      } else if (outside(look.get().minute())) {
        aside++;
      } else if (minutes.add(Math.round(Math.floor(look.get().minute())))) {
        looks.add(look.get());
      }
    }

    private void head(List<String> cells) {
      Map<String, Integer> found = new LinkedHashMap<>();
      for (int i = 0; i < cells.size(); i++) {
        String name = cells.get(i).toLowerCase(Locale.ROOT).replaceAll("\\s*[\\[(].*", "");
        for (Map.Entry<String, List<String>> head : HEADS.entrySet()) {
          if (head.getValue().contains(name)) {
            found.putIfAbsent(head.getKey(), i);
          }
        }
      }
      boolean time = found.containsKey("minute") || found.containsKey("second");
      int values = found.size() - (found.containsKey("minute") ? 1 : 0);
      if (time && values - (found.containsKey("second") ? 1 : 0) > 0) {
        columns = found;
      }
    }

    private String cell(List<String> cells, String name) {
      Integer at = columns.get(name);
      return at == null || at >= cells.size() ? "" : cells.get(at);
    }

    /** Minutes since lighting. */
    private Optional<Double> minute(String text, double minutesOfOne) {
      if (text.matches(NUMBER)) {
        return Optional.of(Double.parseDouble(text.replace(',', '.')) * minutesOfOne);
      }
      try {
        LocalDateTime clock = LocalDateTime.parse(text.replaceFirst(" +", "T"));
        Duration since = Duration.between(burnt.lit, clock.atZone(burnt.zone).toInstant());
        return Optional.of(since.toSeconds() / 60.0);
      } catch (DateTimeException e) {
        return Optional.empty();
      }
    }

    private boolean outside(double minute) {
      Instant out = burnt.out;
      return minute < 0
          || (out != null && minute > Duration.between(burnt.lit, out).toSeconds() / 60.0 + 1);
    }

    private Optional<BurnTest.Look> look(double minute, List<String> cells) {
      Map<String, Double> values = new LinkedHashMap<>();
      for (String name : columns.keySet()) {
        if (!name.equals("minute") && !name.equals("second")) {
          String text = cell(cells, name);
          if (!text.isEmpty() && !allowed(name, text)) {
            return Optional.empty();
          }
          if (!text.isEmpty()) {
            values.put(name, Double.parseDouble(text.replace(',', '.')));
          }
        }
      }
      return values.isEmpty() ? Optional.empty() : Optional.of(seen(minute, values));
    }

    private static boolean allowed(String name, String text) {
      if (!text.matches(NUMBER)) {
        return false;
      }
      double value = Double.parseDouble(text.replace(',', '.'));
      return name.equals("mass_g") ? value >= 0 && value <= 100_000 : value >= -50 && value <= 500;
    }

    private static BurnTest.Look seen(double minute, Map<String, Double> values) {
      return new BurnTest.Look(
          minute,
          values.get("mass_g"),
          null,
          null,
          null,
          null,
          values.get("wall_c"),
          values.get("base_c"),
          null,
          null,
          null,
          null,
          null,
          null,
          null,
          NOTE);
    }
  }
}

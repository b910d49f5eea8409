package pourwright.material;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;

/**
 * Reads materials from comma-separated text, one property a line: {@code
 * code,kind,name,property,value,unit,relative_uncertainty,source}. The unit must be the one that
 * the property's name says. Nothing is skipped: a line that cannot be read stops the reading.
 */
public final class MaterialFile {
  private static final List<String> COLUMNS =
      List.of(
          "code", "kind", "name", "property", "value", "unit", "relative_uncertainty", "source");
  private static final String TYPICAL = "/data/materials.csv";

  private final String file;
  private final Map<String, Draft> drafts = new LinkedHashMap<>();

  private MaterialFile(String file) {
    this.file = file;
  }

  private record Draft(
      String code,
      MaterialKind kind,
      String name,
      Map<String, Sourced> properties,
      List<String> sources) {}

  static List<Material> typical() {
    try (InputStream in = MaterialFile.class.getResourceAsStream(TYPICAL)) {
      if (in == null) {
        throw new UnreadableData(TYPICAL, 0, "-", "the file is missing from the program");
      }
      return read(TYPICAL, new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads every material of the text.
   *
   * @param file the name used in messages
   * @throws UnreadableData naming file, line and column
   */
  public static List<Material> read(String file, Reader text) {
    MaterialFile reading = new MaterialFile(file);
    try (CsvReader<CsvRecord> rows =
        CsvReader.builder()
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(text)) {
      boolean first = true;
      for (CsvRecord row : rows) {
        if (first) {
          reading.header(row);
          first = false;
        } else {
          reading.line(row);
        }
      }
    } catch (CsvParseException e) {
      throw new UnreadableData(file, 0, "-", String.valueOf(e.getMessage()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return reading.finished();
  }

  private void header(CsvRecord row) {
    if (!row.getFields().equals(COLUMNS)) {
      throw new UnreadableData(
          file, row.getStartingLineNumber(), "1", "the first line must be " + COLUMNS);
    }
  }

  private void line(CsvRecord row) {
    long line = row.getStartingLineNumber();
    if (row.getFieldCount() != COLUMNS.size()) {
      String column = String.valueOf(Math.min(row.getFieldCount(), COLUMNS.size()));
      throw new UnreadableData(
          file, line, column, row.getFieldCount() + " columns instead of " + COLUMNS.size());
    }
    String code = row.getField(0);
    MaterialKind kind = read(line, "kind", () -> MaterialKind.of(row.getField(1)));
    read(line, "code", () -> Material.checkCode("code", code));
    String name = row.getField(2);
    if (name.isBlank()) {
      throw new UnreadableData(file, line, "name", "there is no name");
    }
    Draft draft =
        drafts.computeIfAbsent(
            code, c -> new Draft(c, kind, name, new LinkedHashMap<>(), new ArrayList<>()));
    if (draft.kind() != kind || !draft.name().equals(name)) {
      throw new UnreadableData(file, line, "name", code + " had another kind or name before");
    }
    property(line, row, draft);
  }

  private void property(long line, CsvRecord row, Draft draft) {
    String property = row.getField(3);
    double value = number(line, "value", row.getField(4));
    double uncertainty = number(line, "relative_uncertainty", row.getField(6));
    String unit = row.getField(5);
    if (!property.endsWith("_" + unit) && !unit.equals("1")) {
      throw new UnreadableData(
          file, line, "unit", "'" + unit + "' is not the unit that " + property + " says");
    }
    if (row.getField(7).isBlank()) {
      throw new UnreadableData(file, line, "source", "there is no source");
    }
    read(line, "value", () -> Property.check(property, value));
    Sourced sourced = read(line, "relative_uncertainty", () -> Sourced.typical(value, uncertainty));
    if (draft.properties().put(property, sourced) != null) {
      throw new UnreadableData(file, line, "property", property + " stands twice");
    }
    draft.sources().add(property + ": " + row.getField(7));
  }

  private double number(long line, String column, String text) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new UnreadableData(file, line, column, "'" + text + "' is not a number");
    }
  }

  private <T> T read(long line, String column, java.util.function.Supplier<T> reading) {
    try {
      return reading.get();
    } catch (OutOfRange e) {
      throw new UnreadableData(file, line, column, e.sentence() + "; " + e.hint());
    }
  }

  private List<Material> finished() {
    List<Material> all = new ArrayList<>();
    for (Draft draft : drafts.values()) {
      Map<String, Sourced> properties = new LinkedHashMap<>(draft.properties());
      Integer closed = days(properties.remove("shelf_life_closed_d"));
      Integer opened = days(properties.remove("shelf_life_opened_d"));
      all.add(
          new Material(
              draft.code(),
              draft.name(),
              draft.kind(),
              draft.kind().usualUnit(),
              properties,
              new ShelfLife(closed, opened),
              String.join("; ", draft.sources())));
    }
    return all;
  }

  private static @Nullable Integer days(@Nullable Sourced days) {
    return days == null ? null : (int) Math.round(days.value());
  }
}

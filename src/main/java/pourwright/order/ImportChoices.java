package pourwright.order;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;

/**
 * What a person has said about a file; whatever is null is detected, and the import stops where the
 * file can be read in more than one way.
 *
 * @param map column name of each field; empty to go by usual names
 * @param delimiter the character between columns
 * @param decimal the decimal mark of the quantities, {@code .} or {@code ,}
 * @param dates the order of day, month and year in numeric dates
 * @param encoding one of UTF-8, UTF-16LE, UTF-16BE, windows-1252
 * @param sheet name of the worksheet
 * @param today the day of the import: a due date years away from it is a bad one
 * @param zone the studio's zone: a time with an offset counts as the day it is here
 */
public record ImportChoices(
    Map<ImportField, String> map,
    @Nullable Character delimiter,
    @Nullable Character decimal,
    @Nullable DateOrder dates,
    @Nullable String encoding,
    @Nullable String sheet,
    LocalDate today,
    ZoneId zone) {

  /** Keeps its own copy of the map. */
  public ImportChoices {
    map = map.isEmpty() ? Map.of() : Map.copyOf(map);
  }

  /** Nothing said: everything is detected. */
  public static ImportChoices detect(LocalDate today, ZoneId zone) {
    return new ImportChoices(Map.of(), null, null, null, null, null, today, zone);
  }

  /** The same with a column map. */
  public ImportChoices withMap(Map<ImportField, String> columns) {
    return new ImportChoices(columns, delimiter, decimal, dates, encoding, sheet, today, zone);
  }

  /** The same with an order of day, month and year. */
  public ImportChoices withDates(@Nullable DateOrder order) {
    return new ImportChoices(map, delimiter, decimal, order, encoding, sheet, today, zone);
  }

  /** The same with a decimal mark. */
  public ImportChoices withDecimal(@Nullable Character mark) {
    return new ImportChoices(map, delimiter, mark, dates, encoding, sheet, today, zone);
  }

  /** The same with a delimiter. */
  public ImportChoices withDelimiter(@Nullable Character character) {
    return new ImportChoices(map, character, decimal, dates, encoding, sheet, today, zone);
  }

  /** The same with an encoding. */
  public ImportChoices withEncoding(@Nullable String name) {
    return new ImportChoices(map, delimiter, decimal, dates, name, sheet, today, zone);
  }

  /** The same with a worksheet. */
  public ImportChoices withSheet(@Nullable String name) {
    return new ImportChoices(map, delimiter, decimal, dates, encoding, name, today, zone);
  }

  /**
   * Reads the word for a character between columns.
   *
   * @throws OutOfRange when it is none
   */
  public static char delimiterNamed(String word) {
    return switch (word.strip()) {
      case "comma", "," -> ',';
      case "semicolon", ";" -> ';';
      case "tab" -> '\t';
      case "bar", "|" -> '|';
      default ->
          throw new OutOfRange(
              "delimiter", "'" + word + "' is no delimiter", "comma, semicolon, tab or bar");
    };
  }

  /**
   * Reads {@code order=Name,design=Item,quantity=Qty,due=Ship by}. A comma inside a column name is
   * written twice.
   *
   * @throws OutOfRange when a part is not field=column, a field is not known or stands twice
   */
  public static Map<ImportField, String> readMap(String text) {
    Map<ImportField, String> map = new EnumMap<>(ImportField.class);
    for (String part : text.replace(",,", "\u0000").split(",", -1)) {
      int equals = part.indexOf('=');
      if (equals <= 0 || equals == part.length() - 1) {
        throw new OutOfRange(
            "map", "'" + part + "' is not field=column", "write order=Name,design=Item,…");
      }
      ImportField field = ImportField.of(part.substring(0, equals));
      if (map.put(field, part.substring(equals + 1).replace('\u0000', ',')) != null) {
        throw new OutOfRange("map", field.word() + " stands twice", "name one column for it");
      }
    }
    return map;
  }
}

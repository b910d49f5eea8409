package pourwright.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import pourwright.order.DateOrder;
import pourwright.order.ImportChoices;
import pourwright.order.ImportField;
import pourwright.quantity.OutOfRange;

/** What a person can say about an order file that can be read in more than one way. */
public final class Reading {
  @Option(
      names = "--map",
      paramLabel = "FIELD=COLUMN",
      split = ",",
      description =
          "Which column holds what: order, design, quantity, due, channel, customer, note; such as"
              + " due=\"Ship by\".")
  private Map<String, String> map = new LinkedHashMap<>();

  @Option(names = "--dates", paramLabel = "ORDER", description = "d/m/y, m/d/y or y/m/d.")
  private @Nullable String dates;

  @Option(names = "--decimal", paramLabel = "MARK", description = "The decimal mark: . or ,")
  private @Nullable String decimal;

  @Option(
      names = "--delimiter",
      paramLabel = "WORD",
      description = "Between columns: comma, semicolon, tab or bar.")
  private @Nullable String delimiter;

  @Option(
      names = "--encoding",
      paramLabel = "NAME",
      description = "UTF-8, UTF-16LE, UTF-16BE or windows-1252.")
  private @Nullable String encoding;

  @Option(names = "--sheet", paramLabel = "NAME", description = "The worksheet of a workbook.")
  private @Nullable String sheet;

  /** A reading in which nothing is said. */
  public Reading() {}

  /**
   * What was said, as the reader takes it.
   *
   * @throws OutOfRange when a word is not one of those that can be said
   */
  public ImportChoices choices(LocalDate today, ZoneId zone) {
    Map<ImportField, String> columns = new EnumMap<>(ImportField.class);
    map.forEach((field, column) -> columns.put(ImportField.of(field), column));
    DateOrder order = dates == null ? null : DateOrder.of(dates);
    if (dates != null && order == null) {
      throw new OutOfRange("dates", "'" + dates + "' is no order", "d/m/y, m/d/y or y/m/d");
    }
    if (decimal != null && !decimal.equals(".") && !decimal.equals(",")) {
      throw new OutOfRange("decimal", "'" + decimal + "' is no decimal mark", ". or ,");
    }
    return new ImportChoices(
        columns,
        delimiter == null ? null : ImportChoices.delimiterNamed(delimiter),
        decimal == null ? null : decimal.charAt(0),
        order,
        encoding,
        sheet,
        today,
        zone);
  }
}

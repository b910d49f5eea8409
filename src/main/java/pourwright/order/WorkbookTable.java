package pourwright.order;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.jspecify.annotations.Nullable;

/** A workbook's sheet as a table. Formulas count with the value they were saved with. */
final class WorkbookTable {
  private WorkbookTable() {}

  static Table read(byte[] bytes, ImportChoices choices, ToIntFunction<List<Table.Row>> score)
      throws Stop {
    Set<String> names = ZipLimits.check(bytes);
    if (!names.contains("xl/workbook.xml")) {
      throw Stop.unreadable(
          "this is a zip, but not an XLSX workbook", "save it as XLSX or CSV from its program");
    }
    try (ReadableWorkbook workbook =
        new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, true))) {
      return chosen(workbook, choices, score);
    } catch (IOException | ExcelReaderException e) {
      throw Stop.unreadable("the workbook cannot be read", "save it again, or as CSV");
    }
  }

  private static Table chosen(
      ReadableWorkbook workbook, ImportChoices choices, ToIntFunction<List<Table.Row>> score)
      throws Stop, IOException {
    List<Table> tables = new ArrayList<>();
    List<Table> withHeader = new ArrayList<>();
    for (Sheet sheet : workbook.getSheets().toList()) {
      if (choices.sheet() != null && !choices.sheet().equals(sheet.getName())) {
        continue;
      }
      Table table = table(sheet, workbook.isDate1904());
      if (!table.rows().isEmpty()) {
        tables.add(table);
        if (score.applyAsInt(table.rows()) > 0) {
          withHeader.add(table);
        }
      }
    }
    List<Table> candidates = withHeader.isEmpty() ? tables : withHeader;
    if (candidates.size() == 1) {
      return candidates.get(0);
    }
    if (candidates.isEmpty()) {
      throw Stop.unreadable("there is no sheet with anything on it", "look at the sheet's name");
    }
    throw Stop.ambiguous(
        new OrderImport.Question(
            "sheet",
            "several sheets could be the orders",
            candidates.stream().map(Table::encoding).toList()));
  }

  private static Table table(Sheet sheet, boolean from1904) throws Stop, IOException {
    List<Table.Row> rows = new ArrayList<>();
    try (Stream<Row> stream = sheet.openStream()) {
      for (Row row : (Iterable<Row>) stream::iterator) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < row.getCellCount(); i++) {
          cells.add(cell(row.getOptionalCell(i).orElse(null), from1904));
        }
        Table.Row read = new Table.Row(row.getRowNum(), cells);
        if (!read.isBlank()) {
          rows.add(read);
        }
        if (rows.size() > CsvTable.ROWS_MAX) {
          throw Stop.unreadable("more than " + CsvTable.ROWS_MAX + " rows", "split the file");
        }
      }
    }
    return new Table("XLSX", String.valueOf(sheet.getName()), "cells", rows);
  }

  private static Cell cell(org.dhatim.fastexcel.reader.@Nullable Cell cell, boolean from1904) {
    if (cell == null || cell.getType() == CellType.EMPTY) {
      return new Cell.Text("");
    }
    if (cell.getType() == CellType.ERROR) {
      return new Cell.Broken("the cell shows an error, " + cell.getRawValue());
    }
    if (cell.getType() == CellType.BOOLEAN) {
      return new Cell.Text(String.valueOf(cell.asBoolean()));
    }
    Object value = cell.getValue();
    if (cell.getType() == CellType.FORMULA) {
      return formula(cell);
    }
    if (value instanceof BigDecimal number) {
      return isDate(cell.getDataFormatString()) ? day(cell, from1904) : new Cell.Number(number);
    }
    return new Cell.Text(value == null ? "" : String.valueOf(value));
  }

  private static Cell formula(org.dhatim.fastexcel.reader.Cell cell) {
    String raw = cell.getRawValue();
    if (raw == null || raw.isBlank()) {
      return new Cell.Broken("the cell is a formula without a saved result");
    }
    if (raw.startsWith("#")) {
      return new Cell.Broken("the cell shows an error, " + raw);
    }
    if (isDate(cell.getDataFormatString())) {
      return new Cell.Broken("the date is a formula; paste it as a value");
    }
    try {
      return new Cell.Number(new BigDecimal(raw.strip()));
    } catch (NumberFormatException text) {
      return new Cell.Text(raw);
    }
  }

  private static Cell day(org.dhatim.fastexcel.reader.Cell cell, boolean from1904) {
    try {
      LocalDateTime at = cell.asDate();
      if (at == null || (from1904 && at.getYear() < 1904)) {
        return new Cell.Broken("the date cannot be read");
      }
      return new Cell.Day(at.toLocalDate());
    } catch (DateTimeException | IllegalArgumentException | ExcelReaderException e) {
      return new Cell.Broken("the date cannot be read");
    }
  }

  /** A number format that shows a day: has a d or a y outside quotation marks and brackets. */
  private static boolean isDate(@Nullable String format) {
    if (format == null) {
      return false;
    }
    String plain =
        format
            .replaceAll("\"[^\"]*\"", "")
            .replaceAll("\\[[^\\]]*]", "")
            .replaceAll("\\\\.", "")
            .toLowerCase(Locale.ROOT);
    return plain.contains("d") || plain.contains("yy");
  }
}

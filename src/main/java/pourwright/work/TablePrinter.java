package pourwright.work;

import java.util.List;
import java.util.ServiceLoader;

/** Writes tables as files that a spreadsheet opens. */
public interface TablePrinter {
  /** As CSV: RFC 4180, UTF-8; text that looks like a formula is made harmless. */
  byte[] csv(SheetTable table);

  /** As one workbook (XLSX), a sheet for each table. */
  byte[] workbook(List<SheetTable> tables);

  /** The writer that the house has. */
  static TablePrinter ofTheHouse() {
    return ServiceLoader.load(TablePrinter.class)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no writer of tables is in the house"));
  }
}

package pourwright.sheet;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import pourwright.work.SheetTable;
import pourwright.work.TablePrinter;

/** Tables as CSV and as a workbook. */
public final class TableFiles implements TablePrinter {
  @Override
  public byte[] csv(SheetTable table) {
    StringWriter text = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
      writer.writeRecord(table.head());
      table.rows().forEach(row -> writer.writeRecord(row.stream().map(TableFiles::cell).toList()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String cell(Object value) {
    if (value instanceof BigDecimal decimal) {
      return decimal.toPlainString();
    }
    String text = value.toString();
    boolean formula = value instanceof String && text.matches("(?s)[=+\\-@\\t\\r\\n].*");
    return formula ? "'" + text : text;
  }

  @Override
  public byte[] workbook(List<SheetTable> tables) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(out, "Pourwright", "1.0")) {
      for (SheetTable table : tables) {
        Worksheet sheet = book.newWorksheet(table.name());
        for (int c = 0; c < table.head().size(); c++) {
          sheet.value(0, c, table.head().get(c));
          sheet.style(0, c).bold().set();
        }
        sheet.freezePane(0, 1);
        for (int r = 0; r < table.rows().size(); r++) {
          for (int c = 0; c < table.head().size(); c++) {
            put(sheet, r + 1, c, table.rows().get(r).get(c));
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static void put(Worksheet sheet, int row, int column, Object value) {
    if (value instanceof Number number) {
      sheet.value(row, column, number);
      if (value instanceof BigDecimal) {
        sheet.style(row, column).format("#,##0.00").set();
      }
    } else if (value instanceof LocalDate day) {
      sheet.value(row, column, day);
      sheet.style(row, column).format("yyyy-mm-dd").set();
    } else {
      sheet.value(row, column, value.toString());
    }
  }
}

package pourwright.order;

import java.util.List;

/**
 * A file as rows of cells.
 *
 * @param format CSV or XLSX
 * @param encoding of the text, or the name of the worksheet
 * @param delimiter in words
 * @param rows all rows that are not empty, the header among them
 */
record Table(String format, String encoding, String delimiter, List<Row> rows) {
  /**
   * One row.
   *
   * @param lineNumber where it begins in the file, from 1
   * @param cells its cells
   */
  record Row(long lineNumber, List<Cell> cells) {
    Cell cell(int column) {
      return column < cells.size() ? cells.get(column) : new Cell.Text("");
    }

    boolean isBlank() {
      return cells.stream().allMatch(Cell::isBlank);
    }
  }
}

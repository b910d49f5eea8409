package pourwright.work;

import java.util.List;

/**
 * A table to be written as a file.
 *
 * @param name short, as a sheet of a workbook or a file is called
 * @param head column names
 * @param rows cells: text, whole numbers, decimals, days; an empty text for nothing
 */
public record SheetTable(String name, List<String> head, List<List<Object>> rows) {
  /** Keeps its own copies and checks that every row is as wide as the head. */
  public SheetTable {
    head = List.copyOf(head);
    int width = head.size();
    rows = rows.stream().map(List::copyOf).toList();
    if (rows.stream().anyMatch(r -> r.size() != width)) {
      throw new IllegalArgumentException("a row of " + name + " is not as wide as its head");
    }
  }
}

package pourwright.label;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows of a data file beside the program, by column name. A bad line stops the start. */
final class DataRows {
  private DataRows() {}

  /** Rows of {@code /data/label/NAME}; cells are parted by the given character. */
  static List<Map<String, String>> of(String name, String parted) {
    String path = "/data/label/" + name;
    try (InputStream in = DataRows.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("the data file " + path + " is missing");
      }
      BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      return rows(path, reader.lines().toList(), parted);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Map<String, String>> rows(String path, List<String> lines, String parted) {
    String[] header = lines.get(0).split(parted, -1);
    List<Map<String, String>> rows = new ArrayList<>();
    for (int i = 1; i < lines.size(); i++) {
      String[] cells = lines.get(i).split(parted, -1);
      if (cells.length != header.length) {
        throw new IllegalStateException(
            path + " line " + (i + 1) + " has " + cells.length + " cells, not " + header.length);
      }
      Map<String, String> row = new LinkedHashMap<>();
      for (int c = 0; c < header.length; c++) {
        row.put(header[c], cells[c]);
      }
      rows.add(row);
    }
    return rows;
  }
}

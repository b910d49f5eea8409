package pourwright.order;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Which row names the columns and which column each field is in.
 *
 * @param row index among the table's rows
 * @param columns index of the column of each field found
 * @param names its name as the file writes it
 */
record Header(int row, Map<ImportField, Integer> columns, Map<ImportField, String> names) {
  private static final int LOOK_AT = 20;

  /** How many wanted columns the best row has. */
  static int score(List<Table.Row> rows, Map<ImportField, String> map) {
    int best = 0;
    for (int i = 0; i < Math.min(LOOK_AT, rows.size()); i++) {
      best = Math.max(best, matches(rows.get(i), map).size());
    }
    return best >= 2 || (best == 1 && map.size() == 1) ? best : 0;
  }

  /** Columns that could be each field. */
  private static Map<ImportField, List<Integer>> matches(
      Table.Row row, Map<ImportField, String> map) {
    Map<ImportField, List<Integer>> found = new EnumMap<>(ImportField.class);
    for (int column = 0; column < row.cells().size(); column++) {
      String name = Blanks.folded(row.cell(column).shown());
      if (name.isEmpty()) {
        continue;
      }
      for (ImportField field : ImportField.values()) {
        String wanted = map.get(field);
        boolean hit =
            wanted != null
                ? Blanks.folded(wanted).equals(name)
                : map.isEmpty() && field.usualNames().contains(name);
        if (hit) {
          found.computeIfAbsent(field, f -> new ArrayList<>()).add(column);
        }
      }
    }
    return found;
  }

  /** Finds the header: the first of the rows that have the most wanted columns. */
  static Header find(Table table, Map<ImportField, String> map) throws Stop {
    int best = -1;
    Map<ImportField, List<Integer>> bestMatches = Map.of();
    for (int i = 0; i < Math.min(LOOK_AT, table.rows().size()); i++) {
      Map<ImportField, List<Integer>> matches = matches(table.rows().get(i), map);
      if (matches.size() > bestMatches.size()) {
        best = i;
        bestMatches = matches;
      }
    }
    if (best < 0) {
      best = 0;
    }
    Table.Row row = table.rows().get(best);
    Map<ImportField, Integer> columns = new EnumMap<>(ImportField.class);
    Map<ImportField, String> names = new EnumMap<>(ImportField.class);
    for (ImportField field : ImportField.values()) {
      List<Integer> hits = bestMatches.getOrDefault(field, List.of());
      if (hits.size() > 1) {
        throw Stop.ambiguous(question(field, row, "several columns could be the " + words(field)));
      }
      if (hits.isEmpty()) {
        missing(field, row, map);
      } else {
        columns.put(field, hits.get(0));
        names.put(field, row.cell(hits.get(0)).shown());
      }
    }
    return new Header(best, columns, names);
  }

  private static void missing(ImportField field, Table.Row row, Map<ImportField, String> map)
      throws Stop {
    String wanted = map.get(field);
    if (wanted != null) {
      throw Stop.ambiguous(question(field, row, "no column is called '" + wanted + "'"));
    }
    if (field.needed()) {
      throw Stop.ambiguous(
          question(field, row, "it is not clear which column is the " + words(field)));
    }
  }

  private static String words(ImportField field) {
    return switch (field) {
      case ORDER -> "order's number";
      case DESIGN -> "candle";
      case QUANTITY -> "quantity";
      case DUE -> "due date";
      default -> field.word();
    };
  }

  private static OrderImport.Question question(ImportField field, Table.Row row, String sentence) {
    List<String> names = row.cells().stream().map(Cell::shown).filter(n -> !n.isEmpty()).toList();
    return new OrderImport.Question(field.word(), sentence, names);
  }
}

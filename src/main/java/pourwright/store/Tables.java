package pourwright.store;

import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** The tables of the books, in an order in which they can be filled. */
final class Tables {
  /** A table and the columns its rows are put in order by. */
  record Table(String name, String order) {}

  /** The ledger and the customers; all else is worked out from these. */
  static final List<Table> FACTS =
      List.of(
          new Table("deed", "id"),
          new Table("card", "kind, code, version"),
          new Table("mark", "number"),
          new Table("lot", "id"),
          new Table("lot_opening", "lot_id, deed_id"),
          new Table("batch", "id"),
          new Table("batch_finish", "batch_id, deed_id"),
          new Table("batch_step", "id"),
          new Table("batch_step_amount", "step_id, line"),
          new Table("batch_carry", "id"),
          new Table("movement", "id"),
          new Table("piece", "id"),
          new Table("order_line", "id"),
          new Table("piece_event", "id"),
          new Table("tray", "id"),
          new Table("tray_piece", "tray_id, piece_id"),
          new Table("tray_mixed", "tray_id, deed_id"),
          new Table("timer", "id"),
          new Table("timer_answer", "timer_id, deed_id"),
          new Table("reading", "id"),
          new Table("attachment", "id"),
          new Table("hold", "id"),
          new Table("hold_lift", "hold_id, deed_id"),
          new Table("burn_test", "id"),
          new Table("burn_test_close", "test_id, deed_id"),
          new Table("burn_sample", "id"),
          new Table("burn_cycle", "id"),
          new Table("burn_cycle_end", "cycle_id, deed_id"),
          new Table("burn_look", "id"),
          new Table("candle_proof", "id"),
          new Table("setting", "key, deed_id"),
          new Table("plan_run", "id"),
          new Table("order_terms", "line_id, deed_id"),
          new Table("order_fact", "id"),
          new Table("order_file", "fingerprint, deed_id"),
          new Table("money", "id"),
          new Table("after_sale", "id"),
          new Table("customer", "ref"));

  /** Worked out from the facts. */
  static final List<Table> KEPT =
      List.of(
          new Table("undone", "deed_id"),
          new Table("lot_balance", "lot_id"),
          new Table("piece_now", "piece_id"),
          new Table("order_now", "order_number"),
          new Table("still_open", "kind, id"));

  /** Outside the books: what is typed and not kept yet. Goes into no export. */
  static final List<Table> ASIDE = List.of(new Table("draft", "device, form"));

  private Tables() {}

  /** What a column holds. */
  enum Holds {
    /** A whole number. */
    WHOLE,
    /** A number. */
    REAL,
    /** Text. */
    TEXT
  }

  /** Column names and what they hold. */
  static Map<String, Holds> columns(ResultSet rows) throws SQLException {
    ResultSetMetaData meta = rows.getMetaData();
    Map<String, Holds> columns = new LinkedHashMap<>();
    for (int i = 1; i <= meta.getColumnCount(); i++) {
      columns.put(meta.getColumnName(i), holds(meta.getColumnTypeName(i)));
    }
    return columns;
  }

  private static Holds holds(String type) {
    return switch (type.toUpperCase(java.util.Locale.ROOT)) {
      case "TEXT" -> Holds.TEXT;
      case "REAL", "FLOAT8", "DOUBLE PRECISION" -> Holds.REAL;
      default -> Holds.WHOLE;
    };
  }

  /** How many rows each table has. */
  static Map<String, Long> counts(Handle handle) {
    Map<String, Long> counts = new LinkedHashMap<>();
    for (Table table : FACTS) {
      counts.put(
          table.name(),
          handle.createQuery("SELECT COUNT(*) FROM " + table.name()).mapTo(Long.class).one());
    }
    return counts;
  }

  /** True while nothing was ever done in the studio. */
  static boolean isEmpty(Handle handle) {
    return handle.createQuery("SELECT COUNT(*) FROM deed").mapTo(Long.class).one() == 0;
  }

  /** All tables of a kind by name. */
  static List<String> names(List<Table> tables) {
    List<String> names = new ArrayList<>();
    tables.forEach(t -> names.add(t.name()));
    return names;
  }
}

package pourwright.store;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/**
 * Words that change whenever certain facts do. Facts only grow, each with the number of its deed,
 * and taking back, or taking that back, is a deed of its own: so the newest deed of each table and
 * the newest deed that takes back tell one state of these facts from every other.
 */
final class Editions {
  // the sum keeps the database from walking the deeds backward in search of the last
  private static final String NEWEST_UNDO =
      "COALESCE((SELECT MAX(id + 0) FROM deed WHERE undoes > 0), 0)";

  private Editions() {}

  /** SQL for the edition of the facts in some tables; each has an index on its deed. */
  static String of(String... tables) {
    return "SELECT "
        + Arrays.stream(tables)
            .map(table -> "COALESCE((SELECT MAX(deed_id) FROM " + table + "), 0) || ' ' || ")
            .collect(Collectors.joining())
        + NEWEST_UNDO;
  }

  static String read(Handle handle, String sql) {
    return handle.createQuery(sql).mapTo(String.class).one();
  }
}

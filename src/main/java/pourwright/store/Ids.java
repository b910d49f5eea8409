package pourwright.store;

import org.jdbi.v3.core.Handle;

/**
 * The next number of a table: one more than the highest. Rows are never deleted and there is one
 * writer at a time, so numbers are given out once and without gaps.
 */
final class Ids {
  private Ids() {}

  static long next(Handle handle, String table) {
    return next(handle, table, "id");
  }

  static long next(Handle handle, String table, String column) {
    return handle
        .createQuery("SELECT COALESCE(MAX(" + column + "), 0) + 1 FROM " + table)
        .mapTo(Long.class)
        .one();
  }
}

package pourwright.store;

import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

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

  /**
   * The row of this number, where it stands and was not undone. What was appended is read back by
   * it, so that what a book hands out is what it holds.
   *
   * @param asked a query that ends by asking for {@code :id}
   */
  static <T> Optional<T> row(Handle handle, String asked, long id, RowMapper<T> mapper) {
    return handle.createQuery(asked).bind("id", id).map(mapper).findOne();
  }
}

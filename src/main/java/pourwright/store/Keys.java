package pourwright.store;

import java.util.function.ToLongFunction;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.Query;
import org.jspecify.annotations.Nullable;
import pourwright.work.PageOf;

/** Pages of long lists and where each begins. */
final class Keys {
  private Keys() {}

  /** The number below which a newest-first page begins. */
  static long below(@Nullable String after) {
    return after == null ? Long.MAX_VALUE : Long.parseLong(after);
  }

  /**
   * A newest-first page.
   *
   * @param query asks for numbers under {@code :below}, falling, and for {@code :limit} of them
   * @param id the number by which the next page is found
   */
  static <T> PageOf<T> newestFirst(
      Query query,
      @Nullable String after,
      int limit,
      RowMapper<T> row,
      ToLongFunction<? super T> id) {
    return PageOf.cut(
        query.bind("below", below(after)).bind("limit", limit + 1).map(row).list(),
        limit,
        each -> Long.toString(id.applyAsLong(each)));
  }

  /** The text above which an alphabetical page begins. */
  static String above(@Nullable String after) {
    return after == null ? "" : after;
  }
}

package pourwright.work;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Some rows of a long list and where the next ones begin. Pages are found by key, never by counting
 * rows off, so the last page is as quick as the first.
 *
 * @param items the rows
 * @param next what to give as {@code after} for the next page, null at the end
 */
public record PageOf<T>(List<T> items, @Nullable String next) {

  /** Keeps its own copy. */
  public PageOf {
    items = List.copyOf(items);
  }

  /**
   * Cuts a list that was read with one row more than asked for.
   *
   * @param rows up to {@code limit + 1} rows
   * @param key the row's key
   */
  public static <T> PageOf<T> cut(List<T> rows, int limit, Function<T, String> key) {
    if (rows.size() <= limit) {
      return new PageOf<>(rows, null);
    }
    List<T> items = rows.subList(0, limit);
    return new PageOf<>(items, key.apply(items.get(limit - 1)));
  }
}

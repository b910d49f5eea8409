package pourwright.page;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The last thing that was made, kept with what it was made of: it is made anew when that is not the
 * same. For parts of pages that cost much and change seldom.
 *
 * @param <T> what is made; it never changes after
 */
public final class Kept<T> {
  private record Last<T>(Object of, T made) {}

  private volatile @Nullable Last<T> last;

  /**
   * What is made of this.
   *
   * @param of all that it depends on, with an equality that tells any change
   * @param make makes it
   */
  public T get(Object of, Supplier<T> make) {
    Last<T> before = last;
    if (before != null && before.of().equals(of)) {
      return before.made();
    }
    T made = make.get();
    last = new Last<>(of, made);
    return made;
  }
}

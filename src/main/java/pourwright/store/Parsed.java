package pourwright.store;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Records that were read from text before: the same text of the same type is the same record, and
 * records do not change. The texts kept come to a bounded length in all; the longest unused go
 * first.
 */
final class Parsed {
  private record Key(Class<?> type, String text) {}

  private final int charactersMost;
  private final Map<Key, Object> known = new LinkedHashMap<>(64, 0.75f, true);
  private int characters;

  /**
   * @param charactersMost how many characters of text are kept in all
   */
  Parsed(int charactersMost) {
    this.charactersMost = charactersMost;
  }

  /** The record of a text, parsed where it is not known. */
  <T> T read(String text, Class<T> type, Function<String, T> parse) {
    Key key = new Key(type, text);
    Object before = find(key);
    if (before != null) {
      return type.cast(before);
    }
    T value = parse.apply(text);
    keep(key, value);
    return value;
  }

  private synchronized @Nullable Object find(Key key) {
    return known.get(key);
  }

  private synchronized void keep(Key key, Object value) {
    if (known.put(key, value) == null) {
      characters += key.text().length();
    }
    Iterator<Key> eldest = known.keySet().iterator();
    while (characters > charactersMost && eldest.hasNext()) {
      characters -= eldest.next().text().length();
      eldest.remove();
    }
  }

  /** How many characters are kept. */
  synchronized int characters() {
    return characters;
  }
}

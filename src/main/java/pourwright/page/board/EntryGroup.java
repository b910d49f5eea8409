package pourwright.page.board;

import java.util.List;

/**
 * Fields that belong together.
 *
 * @param title what they are about
 * @param entries in order
 */
public record EntryGroup(String title, List<Entry> entries) {
  static EntryGroup of(String title, Entry... entries) {
    return new EntryGroup(title, List.of(entries));
  }
}

package pourwright.page.board;

import java.util.List;

/**
 * Fields that belong together.
 *
 * @param title as it stands above them
 * @param entries the fields
 * @param folded whether they are folded away until one has something in it
 */
public record EntryGroup(String title, List<Entry> entries, boolean folded) {

  /** Fields in sight. */
  public EntryGroup(String title, List<Entry> entries) {
    this(title, entries, false);
  }

  static EntryGroup of(String title, Entry... entries) {
    return new EntryGroup(title, List.of(entries));
  }

  static EntryGroup folded(String title, Entry... entries) {
    return new EntryGroup(title, List.of(entries), true);
  }

  /** Whether one of the fields has something in it or is complained about. */
  public boolean isUsed(pourwright.page.Form form) {
    return entries.stream()
        .anyMatch(e -> !form.value(e.name()).isEmpty() || !form.error(e.name()).isEmpty());
  }
}

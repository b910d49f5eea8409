package pourwright.page.casting;

import java.util.List;
import pourwright.page.Form;

/**
 * Tray cards with vessels on them: finished strings.
 *
 * @param form what was typed
 * @param trays the newest first
 * @param loose vessels that lie on none
 */
public record TraysPage(Form form, List<Tray> trays, List<Tick> loose) {
  /**
   * A tray card.
   *
   * @param id number
   * @param label what is written on it
   * @param mixed whether its castings can no longer be told apart
   * @param casts the casts whose vessels lie on it, or might
   * @param pieces what lies on it
   */
  public record Tray(long id, String label, boolean mixed, String casts, List<Tick> pieces) {}

  /** A vessel to tick: its number, its mark and where it stands. */
  public record Tick(String id, String words) {}

  /** Whether there is nothing to lay anywhere. */
  public boolean isEmpty() {
    return trays.isEmpty() && loose.isEmpty();
  }
}

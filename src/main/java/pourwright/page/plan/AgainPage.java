package pourwright.page.plan;

import java.util.List;
import pourwright.page.Form;

/**
 * Planning again: how far it is, and what would move.
 *
 * @param form what was typed
 * @param state {@code none}, {@code running}, {@code done} or {@code impossible}
 * @param since when it began
 * @param sentence what came of it so far
 * @param aims what was kept small and how near to the best it is
 * @param changes what would stand elsewhere
 * @param reasons why there is no plan
 * @param picture the new plan's coming weeks as SVG
 */
public record AgainPage(
    Form form,
    String state,
    String since,
    String sentence,
    List<String> aims,
    List<Moved> changes,
    List<String> reasons,
    String picture) {
  /** Keeps its own copies. */
  public AgainPage {
    aims = List.copyOf(aims);
    changes = List.copyOf(changes);
    reasons = List.copyOf(reasons);
  }

  /** One step that would move. */
  public record Moved(String words, String from, String to, String by) {}
}

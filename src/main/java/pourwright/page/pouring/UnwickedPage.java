package pourwright.page.pouring;

import java.util.List;
import pourwright.page.Form;

/**
 * Unwicked pieces from what is left: finished strings.
 *
 * @param form what was typed
 * @param kept pours that left something
 * @param total grams of what is chosen; empty while nothing is
 * @param shares what it is made of
 * @param words what it is by the hazard rules
 * @param statements what its label says
 * @param warnings sheets that are missing, reasons not to sell it, what was read cautiously
 */
public record UnwickedPage(
    Form form,
    List<Kept> kept,
    String total,
    List<String> shares,
    String words,
    List<String> statements,
    List<String> warnings) {

  /** What a pour left: its number, its words, and whether it is chosen. */
  public record Kept(String id, String words, boolean chosen) {}
}

package pourwright.page.casting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/**
 * Vessels in one state, and what may happen to them next: finished strings.
 *
 * @param title such as "Hardened vessels"
 * @param state code
 * @param form what was entered
 * @param groups by cast
 * @param acts what may be recorded
 * @param cautions what to mind
 * @param sealers of a coat by code; empty where nothing is sealed or no sealer is in the books
 * @param grits papers for sanding in their order; empty elsewhere
 * @param drying how long walls take, a line a vessel; empty elsewhere
 */
public record PiecesPage(
    String title,
    String state,
    Form form,
    List<Group> groups,
    List<Act> acts,
    List<String> cautions,
    Map<String, String> sealers,
    List<String> grits,
    List<String> drying) {

  /** Whether a piece is ticked: as it was sent; at first those of one cast, if no other is here. */
  public boolean isTicked(Tick tick) {
    List<String> sent = form.values("piece");
    return sent.isEmpty() ? groups.size() == 1 : sent.contains(tick.id());
  }

  /** Faces that a coat goes on. */
  public Map<String, String> faces() {
    Map<String, String> faces = new LinkedHashMap<>();
    faces.put("inside", "inside");
    faces.put("outside", "outside");
    faces.put("both", "inside and outside");
    return faces;
  }

  /**
   * Vessels out of one cast.
   *
   * @param title design and cast
   * @param pieces marks with their numbers
   * @param since when they came to stand here
   */
  public record Group(String title, List<Tick> pieces, String since) {}

  /**
   * A piece to tick.
   *
   * @param id number
   * @param mark as it stands on it
   * @param grade or an empty string
   */
  public record Tick(String id, String mark, String grade) {}

  /**
   * Something that may be recorded.
   *
   * @param step code
   * @param words on the button
   * @param hint what it means
   * @param weighs whether two weighings prove it
   */
  public record Act(String step, String words, String hint, boolean weighs) {}
}

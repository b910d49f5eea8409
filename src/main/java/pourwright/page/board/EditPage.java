package pourwright.page.board;

import java.util.List;
import pourwright.page.Form;

/**
 * A card's form: finished strings.
 *
 * @param title of the page
 * @param action where it is posted to
 * @param groups fields
 * @param form what was entered
 * @param basedOn the version one starts from
 * @param differences where somebody else's newer version differs, empty for no conflict
 */
public record EditPage(
    String title,
    String action,
    List<EntryGroup> groups,
    Form form,
    int basedOn,
    List<Difference> differences) {

  /**
   * A field that two people wrote differently.
   *
   * @param label of the field
   * @param theirs what is saved
   * @param mine what was to be saved
   */
  public record Difference(String label, String theirs, String mine) {}
}

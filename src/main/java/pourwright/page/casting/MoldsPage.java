package pourwright.page.casting;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pourwright.page.Form;

/**
 * How long molds last: finished strings.
 *
 * @param form for one that is retired
 * @param rows the molds
 * @param singles each mold by card and number, for choosing one
 */
public record MoldsPage(Form form, List<Row> rows, Map<String, String> singles) {

  /**
   * Molds of one kind.
   *
   * @param code of the card
   * @param name as it is read
   * @param served what each has served, by number
   * @param life expected, with where that is from
   * @param due what comes next
   * @param when it comes at her pace, or an empty string
   * @param cost of one, and what a piece carries of it
   * @param warns whether it is time
   */
  public record Row(
      String code,
      String name,
      String served,
      String life,
      String due,
      String when,
      String cost,
      boolean warns) {}

  /** The cards by code, for choosing one. */
  public Map<String, String> choices() {
    return rows.stream()
        .collect(Collectors.toMap(Row::code, Row::name, (a, b) -> a, java.util.LinkedHashMap::new));
  }
}

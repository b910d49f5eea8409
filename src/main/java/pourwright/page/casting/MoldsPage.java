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
 */
public record MoldsPage(Form form, List<Row> rows) {

  /**
   * Molds of one kind.
   *
   * @param code of the card
   * @param name as it is read
   * @param served how many there are and what each has served
   * @param life expected, with where that is from
   * @param due what comes next
   * @param warns whether it is time
   */
  public record Row(
      String code, String name, String served, String life, String due, boolean warns) {}

  /** The molds by code, for choosing one. */
  public Map<String, String> choices() {
    return rows.stream()
        .collect(Collectors.toMap(Row::code, Row::name, (a, b) -> a, java.util.LinkedHashMap::new));
  }
}

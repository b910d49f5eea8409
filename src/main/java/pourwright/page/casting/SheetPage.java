package pourwright.page.casting;

import java.util.List;
import java.util.Map;

/**
 * The mix sheet: finished strings.
 *
 * @param title mix and count
 * @param lines what is weighed
 * @param facts figures worth knowing
 * @param more figures for whoever wants to know more
 * @param warnings what the trade would say
 * @param hidden the request, to begin the cast with
 * @param rest where the rest of this mix is looked at, or an empty string
 * @param all words for beginning every mixing of a split, or an empty string
 */
public record SheetPage(
    String title,
    List<Line> lines,
    List<Fact> facts,
    List<Fact> more,
    List<String> warnings,
    Map<String, String> hidden,
    String rest,
    String all) {

  /**
   * Something to weigh.
   *
   * @param name of it
   * @param amount with unit
   * @param range how far to trust it, or an empty string
   */
  public record Line(String name, String amount, String range) {}

  /**
   * A figure.
   *
   * @param label what it is
   * @param value of it
   * @param more where it is from
   */
  public record Fact(String label, String value, String more) {}
}

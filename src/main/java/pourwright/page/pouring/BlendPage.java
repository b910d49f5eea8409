package pourwright.page.pouring;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/**
 * A pour card's blend: finished strings.
 *
 * @param form what was asked
 * @param pours pour cards by code
 * @param name the card; empty while none is chosen
 * @param load the load on the total and on the wax
 * @param limits the limits, the one that binds first
 * @param legal legal limits as they are kept with the fragrances
 * @param warnings limits that are exceeded, and what no sheet tells
 * @param lines what to weigh
 * @param rounding what the scale makes of it
 * @param split a melt over several scents, one line a pitcher; empty when none is asked
 */
public record BlendPage(
    Form form,
    Map<String, String> pours,
    String name,
    String load,
    List<Limit> limits,
    List<Legal> legal,
    List<String> warnings,
    List<Line> lines,
    String rounding,
    List<Pitcher> split) {

  /** A fragrance, and its legal limit in per cent of the whole candle; empty where none is kept. */
  public record Legal(String code, String name, String limit) {}

  /** A limit on the load: whose, how much, and whether it binds or is exceeded. */
  public record Limit(String whose, String most, String says) {}

  /** One material: grams, and for liquids millilitres and drops with their range. */
  public record Line(String name, String grams, String liquid) {}

  /** One pitcher of a split melt. */
  public record Pitcher(String name, String wax, String fragrance) {}
}

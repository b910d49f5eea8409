package pourwright.page.casting;

import java.util.List;
import pourwright.page.Form;

/**
 * What a casting drinks: finished strings.
 *
 * @param form what was weighed
 * @param figures what came of it
 */
public record AbsorptionPage(Form form, List<Figure> figures) {

  /**
   * One figure.
   *
   * @param label what it is
   * @param value with unit
   * @param more how far to trust it
   */
  public record Figure(String label, String value, String more) {}
}

package pourwright.page.casting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/**
 * The rest of a mix: finished strings.
 *
 * @param form what is left
 * @param mixes mix cards by code
 * @param answered whether something was asked
 * @param lines molds to fill
 * @param over what they take of it
 */
public record RestPage(
    Form form, Map<String, String> mixes, boolean answered, List<String> lines, String over) {

  static RestPage asking(Form form, Map<String, String> mixes) {
    return new RestPage(form, mixes, false, List.of(), "");
  }

  /** Which molds are looked at. */
  public Map<String, String> which() {
    Map<String, String> which = new LinkedHashMap<>();
    which.put("small", "kept for the rest of a mix");
    which.put("all", "all that stand free");
    return which;
  }
}

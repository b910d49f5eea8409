package pourwright.page.board;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/**
 * Rubber for a mold: finished strings.
 *
 * @param form what was entered
 * @param vessels masters to choose from
 * @param figures what came of it
 */
public record SiliconePage(
    Form form, Map<String, String> vessels, List<VesselPage.Figure> figures) {}

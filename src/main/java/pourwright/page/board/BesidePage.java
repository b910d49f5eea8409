package pourwright.page.board;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/**
 * Lid and feet of a vessel: finished strings.
 *
 * @param name of the vessel
 * @param root its path
 * @param form what was entered
 * @param lids vessels that may be its lid
 * @param figures what came of it
 */
public record BesidePage(
    String name,
    String root,
    Form form,
    Map<String, String> lids,
    List<VesselPage.Figure> figures) {}

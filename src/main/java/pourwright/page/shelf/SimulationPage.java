package pourwright.page.shelf;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/**
 * What to simulate.
 *
 * @param form what was typed
 * @param outlines shapes to choose from
 * @param waxes usual waxes to choose from
 * @param candles tested candles to hold it against
 * @param runs the runs so far, newest first
 */
public record SimulationPage(
    Form form,
    Map<String, String> outlines,
    Map<String, String> waxes,
    Map<String, String> candles,
    List<ShelfPage.Line> runs) {}

package pourwright.page.shelf;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/**
 * A candle's simulation fitted to its tests.
 *
 * @param candles designs to choose from
 * @param waxes usual waxes
 * @param lines what it stands on and what to think of it, in sentences
 * @param estimates parameter, value, interval, what the readings can tell
 * @param running test by test how far off the model was: test, pool, depth, wall
 * @param foretold reading of the latest test, read, difference
 */
public record FitPage(
    Form form,
    Map<String, String> candles,
    Map<String, String> waxes,
    List<String> lines,
    List<List<String>> estimates,
    List<List<String>> foretold,
    List<List<String>> running) {}

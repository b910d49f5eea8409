package pourwright.page.shelf;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/**
 * Wicks of one candle side by side.
 *
 * @param form the candle that was asked for
 * @param candles designs to choose from
 * @param about what is compared, in a sentence, or an empty string
 * @param wicks wick, tests, candles, passed and failed, how the pools filled
 * @param dots one drawing a measure
 */
public record ComparePage(
    Form form,
    Map<String, String> candles,
    String about,
    List<List<String>> wicks,
    List<Dots> dots) {}

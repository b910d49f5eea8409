package pourwright.page.shelf;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/**
 * What to test next.
 *
 * @param form the candidates as typed
 * @param candles designs whose candidates the books know
 * @param waxes usual waxes for the simulation
 * @param rule her rule of proof in words
 * @param advice which one and why, or an empty string
 * @param outlook how many tests to expect, or an empty string
 * @param candidates what the advice chose from: wick, its rate by memory, simulated, passed,
 *     failed, of like candles, chance
 */
public record NextPage(
    Form form,
    Map<String, String> candles,
    Map<String, String> waxes,
    String rule,
    String advice,
    String outlook,
    List<List<String>> candidates) {}

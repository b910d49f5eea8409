package pourwright.page.plan;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/**
 * The season and the stall: finished strings.
 *
 * @param form what was typed
 * @param candles candles by code
 * @param rule which rule the forecast is made by and why; or why there is none
 * @param months the coming months
 * @param build how to build up stock for them, as sentences
 * @param stall how many to take to a stall, as sentences
 */
public record SeasonPage(
    Form form,
    Map<String, String> candles,
    String rule,
    List<Month> months,
    List<String> build,
    List<String> stall) {
  /** Keeps its own copies. */
  public SeasonPage {
    months = List.copyOf(months);
    build = List.copyOf(build);
    stall = List.copyOf(stall);
  }

  /** One coming month: what may be asked for, and the range that four of five months fall in. */
  public record Month(String month, String expected, String range) {}
}

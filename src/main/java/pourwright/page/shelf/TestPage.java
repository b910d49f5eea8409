package pourwright.page.shelf;

import java.util.List;
import pourwright.page.Form;

/**
 * One burn test: finished strings.
 *
 * @param form what was typed
 * @param id the test's number
 * @param title the candle and the test's number
 * @param lines purpose, rules, begun when and by whom
 * @param open whether it goes on
 * @param samples its candles
 * @param verdict what it says so far
 * @param limits the limits it is judged by, each with its source
 * @param plots readings over time
 * @param growth how each sample's pool grows and how long it may still burn, in sentences
 * @param logged cycles that a log can be read in for: number and words
 * @param photos kept with the test: address and words
 * @param word what was said for or against the design, or an empty string
 * @param mayProve whether the test was closed as passed
 * @param rule her rule of proof in words
 * @param missing what the rule still asks for, in sentences
 */
public record TestPage(
    Form form,
    long id,
    String title,
    List<String> lines,
    boolean open,
    List<SampleView> samples,
    VerdictView verdict,
    List<List<String>> limits,
    List<Plot> plots,
    List<String> growth,
    List<List<String>> logged,
    List<List<String>> photos,
    String word,
    boolean mayProve,
    String rule,
    List<String> missing) {

  /**
   * A candle under test.
   *
   * @param burns the number of the cycle that burns now, or 0
   * @param state in words
   */
  public record SampleView(
      long id, String label, String state, long burns, boolean ended, List<CycleView> cycles) {}

  /**
   * One cycle of a sample.
   *
   * @param missed bells that nobody answered with a reading, or an empty string
   * @param early when it was lit before its rest was over and counts for nothing
   */
  public record CycleView(
      String href,
      String name,
      String lit,
      String ended,
      String rate,
      String missed,
      boolean early) {}

  /**
   * The verdict so far.
   *
   * @param word pass, fail or not enough evidence
   * @param tone how it is shown
   * @param reasons sentences, each with the source of its limit
   * @param evidence how much it proves, or an empty string
   * @param code as it is written into the books
   */
  public record VerdictView(
      String word, String tone, List<String> reasons, String evidence, String code) {}
}

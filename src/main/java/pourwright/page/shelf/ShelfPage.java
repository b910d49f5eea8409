package pourwright.page.shelf;

import java.util.List;

/**
 * The test shelf at a glance: finished strings.
 *
 * @param purpose what is done here
 * @param burning what burns now
 * @param open tests that are not closed, newest first
 * @param closed closed tests, newest first
 * @param designs what is proved for sale and what is not
 * @param canBegin whether there is a candle design to test
 */
public record ShelfPage(
    String purpose,
    List<Line> burning,
    List<Line> open,
    List<Line> closed,
    List<Line> designs,
    boolean canBegin) {

  /**
   * One line that leads somewhere.
   *
   * @param href where to, or an empty string
   * @param title what it is
   * @param detail more of it
   * @param badge a word, or an empty string
   * @param tone how the word is shown: plain, good, warn or stop
   */
  public record Line(String href, String title, String detail, String badge, String tone) {}
}

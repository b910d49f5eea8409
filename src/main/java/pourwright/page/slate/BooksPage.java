package pourwright.page.slate;

import java.util.List;
import pourwright.page.Form;

/**
 * The books of a period: finished strings.
 *
 * @param form the period as it was typed
 * @param periods usual periods: words and address
 * @param told whether a period was asked for
 * @param query what the files are asked for with
 * @param lines what came to what
 * @param months month by month
 * @param notes what a reader must know
 * @param closed up to when the books are closed, or an empty string
 * @param closing the day that is proposed for the next closing
 */
public record BooksPage(
    Form form,
    List<String[]> periods,
    boolean told,
    String query,
    List<Line> lines,
    List<Month> months,
    List<String> notes,
    String closed,
    String closing) {
  /** A line of the overview. */
  public record Line(String what, String money) {}

  /** A month. */
  public record Month(String month, String pieces, String sales, String cost) {}
}

package pourwright.page.press;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/** What the pages of the label press show: finished strings. */
public final class PressPages {
  /** Said on every page with a classification. */
  public static final String NOTE =
      "Worked out by the published criteria. You check it against the supplier's sheet and with your"
          + " local authority before anything is sold.";

  private PressPages() {}

  /**
   * The first page.
   *
   * @param candles designs, by code
   * @param next where the next page begins, or an empty string
   * @param sheets materials of the wax side and whether their sheet is written down
   * @param maker the form with name and addresses
   */
  public record Overview(
      String purpose, List<Candle> candles, String next, List<Sheet> sheets, Form maker) {}

  /** A design in the list. */
  public record Candle(String code, String name, String words, String badge, String tone) {}

  /** A material and its sheet. */
  public record Sheet(String code, String name, String words) {}

  /**
   * A material's sheet.
   *
   * @param form text, revision and whether the rest is harmless
   * @param read what was read, empty before anything was pasted
   * @param unread lines that were left over
   * @param standing the sheet in the books, in words, or an empty string
   */
  public record SheetPage(
      String code,
      String name,
      Form form,
      List<Read> read,
      List<String> unread,
      String standing,
      boolean doubtful) {}

  /** A line as it was read. */
  public record Read(
      String name, String cas, String share, String classes, String more, List<String> doubts) {}

  /**
   * A candle's label.
   *
   * @param words what it is, in codes
   * @param statements in words
   * @param findings why, one sentence each, with where the limit stands
   * @param steps which load adds or drops what
   * @param highest the highest load that changes no class, in words
   * @param against what stands against a sale label
   * @param preview the label as SVG, or an empty string when it does not fit
   * @param trouble why there is no preview, or an empty string
   * @param pdf address of the sheet to print
   */
  public record CandlePage(
      String code,
      String name,
      String words,
      List<String> statements,
      List<Finding> findings,
      List<String> steps,
      String highest,
      List<String> warnings,
      List<String> sheets,
      List<String> against,
      List<String> carrier,
      String preview,
      String trouble,
      String pdf,
      List<String> listing,
      Form form,
      Map<String, String> destinations,
      Map<String, String> carriers) {}

  /** Why, and where the limit stands. */
  public record Finding(String sentence, String next, String source) {}

  /**
   * Net weight control.
   *
   * @param form what was typed
   * @param verdict in words, or an empty string
   * @param tone of the verdict's box
   * @param reasons with the rules
   */
  public record NetPage(
      Form form, Map<String, String> systems, String verdict, String tone, List<String> reasons) {}
}

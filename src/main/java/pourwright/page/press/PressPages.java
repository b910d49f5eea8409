package pourwright.page.press;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
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
   * @param narrower what a narrower range on a sheet would change
   * @param highest the highest load that changes no class, in words
   * @param against what stands against a sale label
   * @param preview the label as SVG, or an empty string when it does not fit
   * @param trouble why there is no preview, or an empty string
   * @param carrier what speaks against the size and the carrier
   * @param sizes what was set and what is asked for
   * @param files addresses of what can be printed or downloaded
   * @param folder address of the proof folder
   * @param listing text for a shop's page by language
   * @param measured what was measured in the newest passed test, or null without one
   */
  public record CandlePage(
      String code,
      String name,
      String words,
      List<String> statements,
      List<Finding> findings,
      List<String> steps,
      List<String> narrower,
      String highest,
      List<String> warnings,
      List<String> sheets,
      List<String> against,
      List<String> carrier,
      List<String> sizes,
      String preview,
      String trouble,
      Files files,
      String folder,
      List<Listed> listing,
      @Nullable Measured measured,
      Form form,
      Map<String, String> languages,
      Map<String, String> destinations,
      Map<String, String> carriers) {}

  /**
   * Labels to be printed again.
   *
   * @param compared which sheets were compared
   * @param comparable false without an older sheet
   */
  public record ReprintPage(
      String code, String name, String compared, boolean comparable, List<Again> again) {}

  /** A label to be printed again. */
  public record Again(String code, String name, String before, String now, long shelf) {}

  /**
   * Scents side by side.
   *
   * @param waxes pour cards whose wax can be taken
   * @param words the load, or an empty string
   * @param without scents that have no sheet
   */
  public record ScentsPage(
      Form form, Map<String, String> waxes, String words, List<Scent> rows, List<String> without) {}

  /** One scent. */
  public record Scent(
      String name, String words, String named, String stop, String sameUpTo, String freeUpTo) {}

  /**
   * A composition in a table, with its columns to be told.
   *
   * @param columns names of the columns by number
   * @param fields what is looked for, by the field of the form
   * @param first some rows, as they stand
   */
  public record TablePage(
      String code,
      String name,
      Form form,
      Map<String, String> columns,
      Map<String, String> fields,
      List<List<String>> first) {}

  /**
   * Formula identifiers.
   *
   * @param made the identifier, or an empty string
   * @param checked what is to be said of a typed one, or an empty string
   */
  public record UfiPage(Form form, Map<String, String> countries, String made, String checked) {}

  /**
   * Limits at the bench.
   *
   * @param said what is to be said of the figures that were typed
   * @param stretches how many stretches of a day are asked for
   */
  public record LimitsPage(Form form, List<String> said, int stretches) {
    /** Copies the list. */
    public LimitsPage {
      said = List.copyOf(said);
    }
  }

  /** Where a label can be had. */
  public record Files(String pdf, String svg, String png) {}

  /** The text for a shop's page in one language. */
  public record Listed(String language, List<String> lines) {}

  /**
   * What was measured in a burn test beside its looks, as text, empty where it was not.
   *
   * @param test its number
   */
  public record Measured(long test, String trim, String left) {}

  /**
   * A candle's proof folder.
   *
   * @param against what stands against issuing one now
   * @param changes what is new since the last, empty when nothing is or there is none
   * @param issued newest first
   * @param form risk notes and how the label is set
   * @param back address of the candle's label
   */
  public record FolderPage(
      String code,
      String name,
      List<String> against,
      List<String> changes,
      int moreChanges,
      List<Issued> issued,
      List<Stands> contents,
      Form form,
      String back) {}

  /** A folder that was issued. */
  public record Issued(int version, String words, String href) {}

  /** A part of the folder as it would be issued now. */
  public record Stands(String head, int lines) {}

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

  /**
   * Who prints labels for sale, and what for.
   *
   * @param candle its name
   * @param action where the signature goes
   * @param file what is printed
   * @param back to the label
   * @param form what was typed
   */
  public record PrintPage(String candle, String action, String file, String back, Form form) {}
}

package pourwright.page.stockroom;

import java.util.List;
import pourwright.page.Form;

/** What the pages of the stockroom show: finished strings. */
public final class StockPages {
  private StockPages() {}

  /**
   * The first page: materials with something to say about each.
   *
   * @param purpose what is done here
   * @param materials on hand, by code
   * @param notices what runs out or goes off, most urgent first
   * @param from where the list begins: code of the last material before, or an empty string
   * @param next where the next page begins, or an empty string
   */
  public record Overview(
      String purpose, List<Row> materials, List<Notice> notices, String from, String next) {}

  /** A material on hand. */
  public record Row(String code, String name, String kind, String onHand, String badge) {}

  /** Something that runs out or goes off. */
  public record Notice(String words, String path, boolean stop) {}

  /**
   * A material and its lots.
   *
   * @param low the level below which it counts as short, or an empty string
   * @param lots with something left, in the order they are drawn
   * @param form shelf life and low level as they stand
   */
  public record MaterialPage(
      String code,
      String name,
      String kind,
      String onHand,
      String low,
      String life,
      List<LotRow> lots,
      Form form) {}

  /** A lot in a list. */
  public record LotRow(
      long id, String code, String onHand, String lastGood, String notice, boolean held) {}

  /**
   * A lot.
   *
   * @param seen what the ledger says, in the small unit: guards a count against what happens
   *     meanwhile
   * @param tare weight of the empty tub as last typed, or an empty string
   * @param papers sheets, certificates and photos of this lot, then of other lots of the material
   * @param movements newest first
   * @param next where the next movements begin, or an empty string
   */
  public record LotPage(
      long id,
      String material,
      String materialName,
      String code,
      String onHand,
      String unit,
      String seen,
      boolean held,
      boolean opened,
      List<Fact> facts,
      List<Fact> movements,
      String next,
      String tare,
      List<Paper> papers,
      Form form) {}

  /** A sheet or photo kept with a lot or with its material. */
  public record Paper(String name, String path) {}

  /** A word and its value. */
  public record Fact(String word, String value) {}
}

package pourwright.page.plan;

import java.util.List;
import pourwright.page.Form;

/**
 * What to buy: finished strings.
 *
 * @param form needs, packs and postage as typed
 * @param rows when each material is to be ordered again
 * @param lead the purchase in one sentence; empty before it was asked for
 * @param packs what to buy, line by line
 * @param doubts what speaks against it
 * @param losses how many are begun so that what is ordered is good
 */
public record BuyPage(
    Form form,
    List<Row> rows,
    String lead,
    List<String> packs,
    List<String> doubts,
    List<String> losses) {
  /** Keeps its own copies. */
  public BuyPage {
    rows = List.copyOf(rows);
    packs = List.copyOf(packs);
    doubts = List.copyOf(doubts);
    losses = List.copyOf(losses);
  }

  /** One material. */
  public record Row(
      String material,
      String onHand,
      String weekly,
      String lead,
      String safety,
      String orderPoint,
      String orderBy,
      boolean now) {}
}

package pourwright.page.plan;

import java.util.List;
import pourwright.page.Form;

/**
 * What to buy: finished strings.
 *
 * @param form needs, packs and postage as typed
 * @param rows when each material is to be ordered again
 * @param answer the cheapest purchase
 * @param onOrder what was ordered and has not come
 * @param losses how many are begun so that what is ordered is good
 */
public record BuyPage(
    Form form, List<Row> rows, Answer answer, List<OnOrder> onOrder, List<String> losses) {
  /** Keeps its own copies. */
  public BuyPage {
    rows = List.copyOf(rows);
    onOrder = List.copyOf(onOrder);
    losses = List.copyOf(losses);
  }

  /**
   * The purchase.
   *
   * @param lead the purchase in one sentence; empty before it was asked for
   * @param packs what to buy, line by line
   * @param days by which day to order, supplier by supplier
   * @param doubts what speaks against it
   * @param ordered the purchase as lines of an order; empty where there is none
   */
  public record Answer(
      String lead, List<String> packs, List<String> days, List<String> doubts, String ordered) {
    /** Before it was asked for. */
    static final Answer NONE = new Answer("", List.of(), List.of(), List.of(), "");

    /** Keeps its own copies. */
    public Answer {
      packs = List.copyOf(packs);
      days = List.copyOf(days);
      doubts = List.copyOf(doubts);
    }
  }

  /** An order that has not come. */
  public record OnOrder(long id, String material, String amount, String supplier, String day) {}

  /** One material. */
  public record Row(
      String material,
      String onHand,
      String onOrder,
      String weekly,
      String lead,
      String safety,
      String orderPoint,
      String orderBy,
      boolean now) {}
}

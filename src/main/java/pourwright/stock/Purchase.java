package pourwright.stock;

import java.util.List;

/** The answer to a {@link PurchaseList}. */
public sealed interface Purchase {
  /**
   * What to buy.
   *
   * @param packs offers with a count above zero, in the order of the list
   * @param goods price of the packs
   * @param shipping postage of all suppliers bought from
   * @param proven true when no cheaper purchase exists
   */
  record Bought(List<Packs> packs, double goods, double shipping, boolean proven)
      implements Purchase {
    /** Keeps its own copy. */
    public Bought {
      packs = List.copyOf(packs);
    }

    /** Goods and shipping together. */
    public double cost() {
      return goods + shipping;
    }
  }

  /** So many packs of the offer with this index. */
  record Packs(int offer, int count) {}

  /**
   * A need that the offers cannot cover.
   *
   * @param need index of the need
   * @param material its name
   * @param askedG what is needed of it in all, g
   * @param offeredG what all offers together hold, g
   */
  record NotToBeHad(int need, String material, double askedG, double offeredG)
      implements Purchase {}
}

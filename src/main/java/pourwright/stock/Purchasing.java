package pourwright.stock;

/** Port: finds the cheapest purchase that covers a list of needs. */
@FunctionalInterface
public interface Purchasing {
  /** The cheapest purchase, postage included, or the needs that no offer covers. */
  Purchase buy(PurchaseList list);
}

package pourwright.cost;

import pourwright.quantity.Check;
import pourwright.quantity.Sourced;

/**
 * What taking something off the price does. Maths: docs/models/cost.md 2.
 *
 * @param price what is asked then
 * @param margin what is left of it
 * @param timesAsMany how many times as many must be sold to leave the same; NaN where nothing is
 *     left of the lower price
 */
public record Discount(double price, double margin, double timesAsMany) {
  /**
   * A discount on a slate's price.
   *
   * @param fraction share of the price taken off, from 0 to below 1
   */
  public static Discount of(Slate slate, double fraction) {
    Check.between("discount_fraction", fraction, 0, 0.95);
    double before = slate.margin().value();
    double price = slate.price().value() * (1 - fraction);
    Sourced lower = new Sourced(price, slate.price().relativeUncertainty(), slate.price().origin());
    double after = new Slate(slate.inputs(), slate.channel(), lower).margin().value();
    return new Discount(price, after, after > 0 && before > 0 ? before / after : Double.NaN);
  }
}

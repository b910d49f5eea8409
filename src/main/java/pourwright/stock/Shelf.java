package pourwright.stock;

import java.time.LocalDate;

/**
 * A lot as it stands on the shelf.
 *
 * @param lot the lot
 * @param onHand how much is left of it, zero or more
 * @param held true while somebody's hold is on the lot
 */
public record Shelf(Lot lot, Amount onHand, boolean held) {

  /** True when something is left, nobody holds it, and it has not expired. */
  public boolean isDrawable(LocalDate today) {
    return onHand.isPositive() && !held && !lot.isExpiredOn(today);
  }
}

package pourwright.material;

import org.jspecify.annotations.Nullable;
import pourwright.quantity.OutOfRange;

/**
 * How long a material keeps. Both are typical values unless a sheet says otherwise; none stated
 * means it keeps.
 *
 * @param closedDays from receipt, in a closed pack; above 0
 * @param openedDays from the first opening; above 0
 */
public record ShelfLife(@Nullable Integer closedDays, @Nullable Integer openedDays) {
  /** Keeps for ever, as far as anyone has written down. */
  public static final ShelfLife KEEPS = new ShelfLife(null, null);

  /** Checks that stated lives are above zero. */
  public ShelfLife {
    check("shelf_life_closed_d", closedDays);
    check("shelf_life_opened_d", openedDays);
  }

  private static void check(String field, @Nullable Integer days) {
    if (days != null && days <= 0) {
      throw new OutOfRange(field, field + " is " + days, "give a whole number of days above 0");
    }
  }
}

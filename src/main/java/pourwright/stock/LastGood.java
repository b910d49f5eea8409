package pourwright.stock;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import pourwright.material.ShelfLife;

/**
 * The last good day of a lot: as printed on the pack, or worked out from the shelf life of its
 * material, closed from receipt and opened from the first opening; whichever is earliest.
 */
public final class LastGood {
  private LastGood() {}

  /** The day; null where nothing says that it goes off. */
  public static @Nullable LocalDate day(Lot lot, ShelfLife life) {
    LocalDate last = lot.expiresOn();
    if (last == null && life.closedDays() != null) {
      last = lot.receivedOn().plusDays(life.closedDays());
    }
    if (lot.openedOn() != null && life.openedDays() != null) {
      LocalDate opened = lot.openedOn().plusDays(life.openedDays());
      last = last == null || opened.isBefore(last) ? opened : last;
    }
    return last;
  }
}

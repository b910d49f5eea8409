package pourwright.card;

import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;

/**
 * Where materials come from.
 *
 * @param leadDays usual days from order to delivery, 0 or more
 * @param note anything worth reading
 */
public record Supplier(String code, String name, int leadDays, @Nullable String note)
    implements Card {
  /** Checks the range. */
  public Supplier {
    Written.head("supplier", code, name);
    Check.between("lead_days", leadDays, 0, 365);
  }

  @Override
  public CardKind kind() {
    return CardKind.SUPPLIER;
  }
}

package pourwright.stock;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import pourwright.material.UnitKind;

/**
 * One delivery of one material, kept apart so that what was made of it can be found.
 *
 * @param id the ledger's number of the lot, from 1
 * @param material code of the material's card
 * @param code the lot code on the pack, or one of our own
 * @param kind what the material is counted in
 * @param supplier code of the supplier's card, if known
 * @param receivedOn the day it came in
 * @param openedOn the day the pack was first opened, if it was
 * @param expiresOn the last good day as printed or as worked out, if there is one
 * @param price what the whole received amount cost with its share of shipping, if known
 * @param deed the deed that brought it in
 */
public record Lot(
    long id,
    String material,
    String code,
    UnitKind kind,
    @Nullable String supplier,
    LocalDate receivedOn,
    @Nullable LocalDate openedOn,
    @Nullable LocalDate expiresOn,
    @Nullable Price price,
    long deed) {

  /** True when the last good day is before {@code day}. */
  public boolean isExpiredOn(LocalDate day) {
    return expiresOn != null && expiresOn.isBefore(day);
  }
}

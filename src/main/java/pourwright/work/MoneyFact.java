package pourwright.work;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import pourwright.cost.MoneyKind;

/**
 * Money that moved, or a price that was agreed.
 *
 * @param id the ledger's number, 0 before it is written
 * @param kind what for
 * @param order number of the order it belongs to, if it does
 * @param line the order line, for an agreed price
 * @param minor whole cents, 0 or more
 * @param currency three letters
 * @param day when
 * @param words what was said about it
 * @param deed the deed, 0 before it is written
 */
public record MoneyFact(
    long id,
    MoneyKind kind,
    @Nullable String order,
    @Nullable Long line,
    long minor,
    String currency,
    LocalDate day,
    String words,
    long deed) {}

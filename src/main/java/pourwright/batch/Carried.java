package pourwright.batch;

import pourwright.stock.Amount;

/**
 * What was left of one pour and went into another.
 *
 * @param id the ledger's number, 0 before it is written
 * @param from the pour that it was left of
 * @param into the pour that it went into
 * @param amount its mass, above zero
 * @param deed the deed, 0 before it is written
 */
public record Carried(long id, long from, long into, Amount amount, long deed) {}

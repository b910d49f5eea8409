package pourwright.batch;

import pourwright.stock.Amount;

/** How much of a material a step calls for. */
public record PlannedAmount(String material, Amount amount) {}

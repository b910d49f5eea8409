package pourwright.work;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One run of the planner, kept so that a day can be looked at again.
 *
 * @param id the ledger's number, 0 before it is written
 * @param problemHash SHA-256 of the problem it solved
 * @param seed the solver's seed
 * @param status what came of it, in one word
 * @param objective the value reached, if any
 * @param bound the bound proved, if any
 * @param millis how long it took
 * @param body the plan, as JSON
 * @param at when
 * @param deed the deed, 0 before it is written
 */
public record PlanRun(
    long id,
    String problemHash,
    long seed,
    String status,
    @Nullable Double objective,
    @Nullable Double bound,
    long millis,
    String body,
    Instant at,
    long deed) {}

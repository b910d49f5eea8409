package pourwright.work;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One acknowledged act of a person. Every line of the ledger belongs to one.
 *
 * @param id the ledger's number, from 1, in the order of writing
 * @param at when it was acknowledged
 * @param by initials
 * @param verb what was done, as the history shows it: {@code received}, {@code recorded a step}
 * @param subject what it was done to
 * @param requestKey the request that asked for it, unique
 * @param undoes the deed that this one takes back, if it does
 * @param note what was said about it
 * @param undone true while a later deed takes this one back
 */
public record Deed(
    long id,
    Instant at,
    String by,
    String verb,
    Subject subject,
    String requestKey,
    @Nullable Long undoes,
    String note,
    boolean undone) {}

package pourwright.work;

import java.time.Instant;

/**
 * One version of a card.
 *
 * @param kind its kind
 * @param code its code, unique in its kind
 * @param version from 1 upward
 * @param body what is written on it
 * @param retired true when it was put away and is no longer offered
 * @param at when it was saved
 * @param by initials of who saved it
 * @param deed the deed
 */
public record CardVersion<T>(
    Drawer<T> kind,
    String code,
    int version,
    T body,
    boolean retired,
    Instant at,
    String by,
    long deed) {}

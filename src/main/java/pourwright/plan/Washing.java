package pourwright.plan;

/**
 * Washing a thing of capacity 1 between colours or scents: a step of one family ends at least this
 * long before the next step of another family begins on it.
 *
 * @param resource key of the thing
 * @param minutes how long washing takes; hands are not counted
 */
public record Washing(String resource, int minutes) {}

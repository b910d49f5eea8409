package pourwright.page;

/**
 * A timer as the strip on every page shows it: finished strings.
 *
 * @param id what it is answered by
 * @param name what it is for, such as "Demold Bollard"
 * @param deadlineMillis the absolute moment it rings, milliseconds since 1970
 * @param left what is left, such as {@code 12:05}, or since when it rings, such as {@code +0:40}
 * @param at the clock time it rings, such as {@code 14:20}
 * @param link the page it belongs to, or an empty string
 * @param rings whether the moment has come
 */
public record Bell(
    String id,
    String name,
    long deadlineMillis,
    String left,
    String at,
    String link,
    boolean rings) {}

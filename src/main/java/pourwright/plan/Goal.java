package pourwright.plan;

/**
 * A date to keep: the step whose end fulfils it.
 *
 * @param key unique, e.g. {@code order 1042 line 2}
 * @param words as it is shown
 * @param lastStep key of the step whose end counts
 * @param dueMin promised minute; its end at or before this is in time
 * @param weight how much a minute late counts, 1 or more
 */
public record Goal(String key, String words, String lastStep, int dueMin, int weight) {}

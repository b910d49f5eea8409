package pourwright.plan;

import org.jspecify.annotations.Nullable;

/**
 * A step with its place in time.
 *
 * @param step key of the step
 * @param startMin when it begins
 * @param endMin when it ends, exclusive
 * @param person key of who does it, for steps of kind HANDS; null otherwise
 */
public record Placed(String step, int startMin, int endMin, @Nullable String person) {}

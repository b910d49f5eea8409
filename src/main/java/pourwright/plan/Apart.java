package pourwright.plan;

/**
 * Two kinds of work that never go on at the same time, in one room.
 *
 * @param tag one tag, see {@link Step#tags()}
 * @param otherTag the other; equal to {@code tag} when two such steps may not meet
 * @param reason why, e.g. {@code a solvent coat near a warm melter}
 */
public record Apart(String tag, String otherTag, String reason) {}

package pourwright.plan;

/**
 * A thing held over several steps: from the start of one to the end of another, whatever lies
 * between. A mold from the cast to the demold, a drying place from the demold to the seal.
 *
 * @param resource key of the thing
 * @param amount how many of it
 * @param fromStep key of the step whose start takes it
 * @param toStep key of the step whose end gives it back
 */
public record Span(String resource, int amount, String fromStep, String toStep) {}

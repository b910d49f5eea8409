package pourwright.plan;

import java.util.List;

/**
 * The steps of one cast or pour.
 *
 * @param job the cast or pour
 * @param steps its steps in order
 * @param links its waits
 * @param spans what it holds over several steps
 */
record Route(Object job, List<Step> steps, List<Link> links, List<Span> spans) {}

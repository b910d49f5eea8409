/**
 * Plan problems in whole minutes, rules as sentences, the forward rule of work, and a checker that
 * shares no code with any solver.
 */
@NullMarked
package pourwright.plan;

import org.jspecify.annotations.NullMarked;

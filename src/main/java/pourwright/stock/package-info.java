/**
 * The append-only truth: lots, movements, what is on hand, the trace. A mistake is corrected by a
 * new fact.
 */
@NullMarked
package pourwright.stock;

import org.jspecify.annotations.NullMarked;

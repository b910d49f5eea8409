/**
 * The true cost of a piece and its price. Knows {@code quantity} and {@code stock}. Maths and
 * sources: docs/models/cost.md.
 */
@NullMarked
package pourwright.cost;

import org.jspecify.annotations.NullMarked;

/** The constraint solver behind planning, packing and buying: the only importer of OR-Tools. */
@NullMarked
package pourwright.solve;

import org.jspecify.annotations.NullMarked;

/** The stockroom: materials, lots, counts, buying, tracing. */
@NullMarked
package pourwright.page.stockroom;

import org.jspecify.annotations.NullMarked;

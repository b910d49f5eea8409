/** The pouring bench: wicking, melt, fragrance, cooling, pour, tops, trim, rest. */
@NullMarked
package pourwright.page.pouring;

import org.jspecify.annotations.NullMarked;

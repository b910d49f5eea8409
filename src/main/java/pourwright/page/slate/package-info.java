/** The slate: cost of a piece, price, channels, margins. */
@NullMarked
package pourwright.page.slate;

import org.jspecify.annotations.NullMarked;

/** The drawing board: molds, vessels and candles, drawn to scale with dimensions. */
@NullMarked
package pourwright.page.board;

import org.jspecify.annotations.NullMarked;

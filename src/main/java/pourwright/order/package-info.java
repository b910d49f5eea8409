/** Orders and their lines, reading of a shop's order file. */
@NullMarked
package pourwright.order;

import org.jspecify.annotations.NullMarked;

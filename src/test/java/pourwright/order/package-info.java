/** Tests of orders and of reading a shop's order file. */
@NullMarked
package pourwright.order;

import org.jspecify.annotations.NullMarked;

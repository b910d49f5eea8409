/** The order book: orders and stall stock to make, reading an order file, the promise date. */
@NullMarked
package pourwright.page.orders;

import org.jspecify.annotations.NullMarked;

/** The order book seen in a browser: reading a file, promising a day. */
@NullMarked
package pourwright.page.orders;

import org.jspecify.annotations.NullMarked;

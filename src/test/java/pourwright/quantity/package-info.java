@NullMarked
package pourwright.quantity;

import org.jspecify.annotations.NullMarked;

@NullMarked
package pourwright.stock;

import org.jspecify.annotations.NullMarked;

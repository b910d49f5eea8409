@NullMarked
package pourwright.wick;

import org.jspecify.annotations.NullMarked;

@NullMarked
package pourwright.cast;

import org.jspecify.annotations.NullMarked;

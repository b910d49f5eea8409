@NullMarked
package pourwright.shape;

import org.jspecify.annotations.NullMarked;

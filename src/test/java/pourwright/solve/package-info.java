@NullMarked
package pourwright.solve;

import org.jspecify.annotations.NullMarked;

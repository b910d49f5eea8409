@NullMarked
package pourwright.cost;

import org.jspecify.annotations.NullMarked;

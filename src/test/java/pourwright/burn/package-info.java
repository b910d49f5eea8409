@NullMarked
package pourwright.burn;

import org.jspecify.annotations.NullMarked;

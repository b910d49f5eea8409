@NullMarked
package pourwright.pour;

import org.jspecify.annotations.NullMarked;

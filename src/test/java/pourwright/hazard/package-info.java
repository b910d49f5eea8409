@NullMarked
package pourwright.hazard;

import org.jspecify.annotations.NullMarked;

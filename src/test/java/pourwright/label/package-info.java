@NullMarked
package pourwright.label;

import org.jspecify.annotations.NullMarked;

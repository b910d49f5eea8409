@NullMarked
package pourwright.heat;

import org.jspecify.annotations.NullMarked;

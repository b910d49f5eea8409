/** Tests of what is printed. */
@NullMarked
package pourwright.sheet;

import org.jspecify.annotations.NullMarked;

/** Tests of the room of the same name. */
@NullMarked
package pourwright.work;

import org.jspecify.annotations.NullMarked;

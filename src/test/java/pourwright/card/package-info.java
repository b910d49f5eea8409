/** Tests of the room of the same name. */
@NullMarked
package pourwright.card;

import org.jspecify.annotations.NullMarked;

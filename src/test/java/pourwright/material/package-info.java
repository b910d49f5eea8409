/** Tests of the materials. */
@NullMarked
package pourwright.material;

import org.jspecify.annotations.NullMarked;

/** The casting bench: mix sheet, cast, set, demold, sand, seal, tightness check. */
@NullMarked
package pourwright.page.casting;

import org.jspecify.annotations.NullMarked;

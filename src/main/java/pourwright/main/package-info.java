/** Wiring, settings, launch and the sample studio. Plain constructors. */
@NullMarked
package pourwright.main;

import org.jspecify.annotations.NullMarked;

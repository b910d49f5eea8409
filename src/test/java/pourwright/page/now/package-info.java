/** The page of today seen in a browser. */
@NullMarked
package pourwright.page.now;

import org.jspecify.annotations.NullMarked;

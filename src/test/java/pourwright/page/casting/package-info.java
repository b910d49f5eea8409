@NullMarked
package pourwright.page.casting;

import org.jspecify.annotations.NullMarked;

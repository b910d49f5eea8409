@NullMarked
package pourwright.page.guard;

import org.jspecify.annotations.NullMarked;

@NullMarked
package pourwright.page.pouring;

import org.jspecify.annotations.NullMarked;

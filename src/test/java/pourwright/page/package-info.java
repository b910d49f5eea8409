@NullMarked
package pourwright.page;

import org.jspecify.annotations.NullMarked;

@NullMarked
package pourwright.page.shelf;

import org.jspecify.annotations.NullMarked;

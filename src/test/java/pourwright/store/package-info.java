@NullMarked
package pourwright.store;

import org.jspecify.annotations.NullMarked;
